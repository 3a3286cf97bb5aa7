namespace ReworkThermal.App.Rendering.Charts;

/// <summary>A horizontal mark across a chart.</summary>
/// <param name="Name">What it marks.</param>
/// <param name="Y">Where, in the unit of the vertical axis.</param>
internal sealed record ChartLevel(string Name, double Y);
