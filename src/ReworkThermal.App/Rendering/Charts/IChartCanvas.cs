namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Something a chart can be drawn on. Places are in pixels from the upper left corner.</summary>
internal interface IChartCanvas
{
    /// <summary>Draws a chain of straight lines.</summary>
    /// <param name="points">Two points or more.</param>
    /// <param name="pen">Colour, width and dashes.</param>
    public void Polyline(IReadOnlyList<ChartPoint> points, ChartPen pen);

    /// <summary>Writes a line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="place">Where its baseline starts, ends or has its middle.</param>
    /// <param name="style">Size, anchor and direction.</param>
    public void Text(string text, ChartPoint place, ChartTextStyle style);
}
