namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Where everything of a chart stands, in pixels; shared by every way of drawing it.</summary>
internal sealed class ChartLayout
{
    internal const int Width = 940;

    internal const int Height = 480;

    internal const int Left = 70;

    internal const int Right = Width - 270;

    internal const int Top = 46;

    internal const int Bottom = Height - 56;

    /// <summary>Space between two labels at the right edge [px].</summary>
    internal const int LabelHeight = 17;

    // Line colours after Okabe and Ito (2008), which stay apart for colour-blind readers; each comes with its own dash pattern, so
    // that colour is never the only sign.
    private static readonly string[] _colours = ["#0072b2", "#d55e00", "#009e73", "#cc79a7", "#56b4e9", "#e69f00", "#000000"];

    private static readonly double[][] _dashes = [[], [8, 4], [2, 3], [10, 3, 2, 3], [5, 2], [14, 4], [2, 6]];

    /// <summary>Lays a chart out.</summary>
    /// <param name="chart">The chart.</param>
    internal ChartLayout(Chart chart)
    {
        X = new ChartAxis(chart.Lines.SelectMany(l => l.Points).Select(p => p.X), Left, Right - Left);
        Y = new ChartAxis(chart.Lines.SelectMany(l => l.Points).Select(p => p.Y).Concat(chart.Levels.Select(l => l.Y)), Bottom, Top - Bottom);
        LabelPlaces = SpreadLabels(chart);
    }

    /// <summary>Horizontal axis.</summary>
    internal ChartAxis X { get; }

    /// <summary>Vertical axis.</summary>
    internal ChartAxis Y { get; }

    /// <summary>Vertical place of the label of every line, then of every level [px].</summary>
    internal IReadOnlyList<double> LabelPlaces { get; }

    /// <summary>Colour of a line, as #rrggbb.</summary>
    internal static string ColourOf(int line) => _colours[line % _colours.Length];

    /// <summary>Lengths of dashes and gaps of a line [px]; empty for a full line.</summary>
    internal static IReadOnlyList<double> DashesOf(int line) => _dashes[(line + (line / _colours.Length)) % _dashes.Length];

    // Labels stand beside the ends of their lines; those that would overlap are pushed down, and the whole stack up again if it
    // would leave the drawing.
    private double[] SpreadLabels(Chart chart)
    {
        double[] wanted = [.. chart.Lines.Select(l => Y.At(l.Points[^1].Y)), .. chart.Levels.Select(l => Y.At(l.Y))];
        int[] order = [.. Enumerable.Range(0, wanted.Length).OrderBy(i => wanted[i])];
        double next = Top;
        foreach (int i in order)
        {
            wanted[i] = Math.Max(wanted[i], next);
            next = wanted[i] + LabelHeight;
        }

        double most = Bottom;
        foreach (int i in order.Reverse())
        {
            wanted[i] = Math.Min(wanted[i], most);
            most = wanted[i] - LabelHeight;
        }

        return wanted;
    }
}
