using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>Cells of a stretch of one direction.</summary>
/// <param name="To">End of the stretch; it begins where the one before it ends.</param>
/// <param name="Cells">Number of cells, at least one.</param>
/// <param name="Ratio">Width of each cell over that of the one before it, above zero; 1 for equal widths.</param>
public sealed record Division(Length To, int Cells, double Ratio = 1);
