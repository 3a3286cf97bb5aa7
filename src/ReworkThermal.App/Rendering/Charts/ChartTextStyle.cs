namespace ReworkThermal.App.Rendering.Charts;

/// <summary>How a text of a chart is written.</summary>
/// <param name="Size">Font size [px].</param>
/// <param name="Anchor">Which point of the text is placed.</param>
/// <param name="Upwards">Whether it runs from the bottom to the top instead of from left to right.</param>
internal sealed record ChartTextStyle(double Size, ChartAnchor Anchor, bool Upwards = false);
