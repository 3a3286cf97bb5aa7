namespace ReworkThermal.App.Rendering.Charts;

/// <summary>How a line of a chart is drawn.</summary>
/// <param name="Colour">As #rrggbb.</param>
/// <param name="Width">Width [px].</param>
/// <param name="Dashes">Lengths of dashes and gaps in turn [px], an even number of them; empty for a full line.</param>
internal sealed record ChartPen(string Colour, double Width, IReadOnlyList<double> Dashes);
