using System.Globalization;
using System.Security;
using System.Text;

namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Draws as Scalable Vector Graphics (SVG 1.1). The same chart gives the same text on every machine.</summary>
internal sealed class SvgCanvas : IChartCanvas
{
    private readonly StringBuilder _svg = new();

    private SvgCanvas()
    {
    }

    /// <summary>Draws a chart.</summary>
    /// <param name="chart">The chart.</param>
    /// <returns>An SVG document.</returns>
    internal static string Draw(Chart chart)
    {
        SvgCanvas canvas = new();
        ChartDrawing.Draw(chart, canvas);
        return string.Create(CultureInfo.InvariantCulture, $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{ChartLayout.Width}" height="{ChartLayout.Height}" viewBox="0 0 {ChartLayout.Width} {ChartLayout.Height}" font-family="sans-serif">
            <title>{Escaped(chart.Title)}</title>
            <rect width="{ChartLayout.Width}" height="{ChartLayout.Height}" fill="#ffffff"/>
            {canvas._svg}</svg>

            """).ReplaceLineEndings("\n");
    }

    /// <inheritdoc/>
    public void Polyline(IReadOnlyList<ChartPoint> points, ChartPen pen)
    {
        string dashes = pen.Dashes.Count > 0 ? $" stroke-dasharray=\"{string.Join(' ', pen.Dashes.Select(Short))}\"" : string.Empty;
        _svg.Append(CultureInfo.InvariantCulture, $"<polyline fill=\"none\" stroke=\"{pen.Colour}\" stroke-width=\"{Short(pen.Width)}\"{dashes} points=\"");
        _svg.AppendJoin(' ', points.Select(p => Short(p.X) + "," + Short(p.Y))).Append("\"/>\n");
    }

    /// <inheritdoc/>
    public void Text(string text, ChartPoint place, ChartTextStyle style)
    {
        string anchor = style.Anchor switch { ChartAnchor.Middle => "middle", ChartAnchor.End => "end", _ => "start" };
        string turn = style.Upwards ? $" transform=\"rotate(-90 {Short(place.X)} {Short(place.Y)})\"" : string.Empty;
        _svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Short(place.X)}\" y=\"{Short(place.Y)}\" font-size=\"{Short(style.Size)}\" text-anchor=\"{anchor}\"{turn}>{Escaped(text)}</text>\n");
    }

    private static string Short(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Escaped(string text) => SecurityElement.Escape(SafeText.OneLine(text));
}
