namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Lines over a common axis, ready to be drawn.</summary>
/// <param name="Title">Heading.</param>
/// <param name="XAxis">What the horizontal axis shows, with its unit.</param>
/// <param name="YAxis">What the vertical axis shows, with its unit.</param>
/// <param name="Lines">The lines, at least one, each with at least one finite point.</param>
/// <param name="Levels">Horizontal marks, for example a flow temperature.</param>
internal sealed record Chart(string Title, string XAxis, string YAxis, IReadOnlyList<ChartLine> Lines, IReadOnlyList<ChartLevel> Levels);
