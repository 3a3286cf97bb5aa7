namespace ReworkThermal.App.Rendering.Charts;

/// <summary>One line of a chart.</summary>
/// <param name="Name">Its name in the legend.</param>
/// <param name="Points">Its points by rising x, finite.</param>
internal sealed record ChartLine(string Name, IReadOnlyList<ChartPoint> Points);
