using System.Globalization;

namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Draws into pixels with smooth edges. It needs no font and no library, so a picture is the same on every machine.</summary>
internal sealed class RasterCanvas : IChartCanvas
{
    private const int Channels = 3;

    private const double TextPenWidth = 1.2;

    private readonly byte[] _pixels = new byte[ChartLayout.Width * ChartLayout.Height * Channels];

    private RasterCanvas() => Array.Fill(_pixels, byte.MaxValue);

    /// <summary>Draws a chart.</summary>
    /// <param name="chart">The chart.</param>
    /// <returns>A Portable Network Graphics file.</returns>
    internal static byte[] Draw(Chart chart)
    {
        RasterCanvas canvas = new();
        ChartDrawing.Draw(chart, canvas);
        return PngFile.Encode(canvas._pixels, ChartLayout.Width, ChartLayout.Height);
    }

    /// <inheritdoc/>
    public void Polyline(IReadOnlyList<ChartPoint> points, ChartPen pen)
    {
        DashWalk walk = new(pen.Dashes);
        for (int i = 1; i < points.Count; i++)
        {
            foreach ((ChartPoint from, ChartPoint to) in walk.Along(points[i - 1], points[i]))
            {
                Stroke(from, to, pen.Width, ColourOf(pen.Colour));
            }
        }
    }

    /// <inheritdoc/>
    public void Text(string text, ChartPoint place, ChartTextStyle style)
    {
        string safe = SafeText.OneLine(text);
        double unit = style.Size / StrokeFont.UnitsPerSize;
        double length = safe.Length * StrokeFont.Advance * unit;
        double along = style.Anchor switch { ChartAnchor.Middle => -length / 2, ChartAnchor.End => -length, _ => 0 };
        foreach (char letter in safe)
        {
            foreach (IReadOnlyList<ChartPoint> stroke in StrokeFont.StrokesOf(letter))
            {
                ChartPoint[] chain = [.. stroke.Select(p => Placed(along + (p.X * unit), p.Y * unit))];
                for (int i = 1; i < chain.Length; i++)
                {
                    Stroke(chain[i - 1], chain[i], TextPenWidth, (0, 0, 0));
                }
            }

            along += StrokeFont.Advance * unit;
        }

        ChartPoint Placed(double forward, double up) => style.Upwards
            ? new ChartPoint(place.X - up, place.Y - forward)
            : new ChartPoint(place.X + forward, place.Y - up);
    }

    // A pixel is covered by as much as it lies within the pen's half width of the segment.
    private void Stroke(ChartPoint from, ChartPoint to, double width, (byte Red, byte Green, byte Blue) colour)
    {
        double reach = (width / 2) + 1;
        int left = Math.Max(0, (int)Math.Floor(Math.Min(from.X, to.X) - reach));
        int right = Math.Min(ChartLayout.Width - 1, (int)Math.Ceiling(Math.Max(from.X, to.X) + reach));
        int top = Math.Max(0, (int)Math.Floor(Math.Min(from.Y, to.Y) - reach));
        int bottom = Math.Min(ChartLayout.Height - 1, (int)Math.Ceiling(Math.Max(from.Y, to.Y) + reach));
        for (int y = top; y <= bottom; y++)
        {
            for (int x = left; x <= right; x++)
            {
                double coverage = Math.Clamp((width / 2) + 0.5 - Distance(x + 0.5, y + 0.5, from, to), 0, 1);
                Blend(((y * ChartLayout.Width) + x) * Channels, coverage, colour);
            }
        }
    }

    private void Blend(int at, double coverage, (byte Red, byte Green, byte Blue) colour)
    {
        if (coverage > 0)
        {
            _pixels[at] = Mixed(_pixels[at], colour.Red, coverage);
            _pixels[at + 1] = Mixed(_pixels[at + 1], colour.Green, coverage);
            _pixels[at + 2] = Mixed(_pixels[at + 2], colour.Blue, coverage);
        }
    }

    private static byte Mixed(byte below, byte above, double coverage) => (byte)Math.Round(below + ((above - below) * coverage));

    private static double Distance(double x, double y, ChartPoint from, ChartPoint to)
    {
        double alongX = to.X - from.X;
        double alongY = to.Y - from.Y;
        double squared = (alongX * alongX) + (alongY * alongY);
        double share = squared > 0 ? Math.Clamp((((x - from.X) * alongX) + ((y - from.Y) * alongY)) / squared, 0, 1) : 0;
        return Math.Sqrt(Math.Pow(x - from.X - (share * alongX), 2) + Math.Pow(y - from.Y - (share * alongY), 2));
    }

    private static (byte Red, byte Green, byte Blue) ColourOf(string text)
    {
        int value = int.Parse(text.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return ((byte)(value >> 16), (byte)(value >> 8), (byte)value);
    }
}
