namespace ReworkThermal.App.Rendering.Charts;

/// <summary>A point in the units of the chart's axes.</summary>
/// <param name="X">Horizontal.</param>
/// <param name="Y">Vertical.</param>
internal readonly record struct ChartPoint(double X, double Y);
