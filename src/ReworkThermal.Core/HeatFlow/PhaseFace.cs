namespace ReworkThermal.Core.HeatFlow;

/// <summary>A face at a cell that melts: its conductance follows the liquid fraction.</summary>
/// <param name="Target">Vector that holds the conductance.</param>
/// <param name="Place">Place in that vector.</param>
/// <param name="CellA">First cell.</param>
/// <param name="CellB">Second cell.</param>
/// <param name="GeometryA">Half-cell resistance of the first cell times its conductivity [1/m].</param>
/// <param name="GeometryB">Half-cell resistance of the second cell times its conductivity [1/m].</param>
/// <param name="Contact">Contact resistance [K/W].</param>
/// <param name="SolidA">Conductivity of the first cell while it does not melt [W/mK].</param>
/// <param name="SolidB">Conductivity of the second cell while it does not melt [W/mK].</param>
internal sealed record PhaseFace(
    double[] Target,
    int Place,
    int CellA,
    int CellB,
    double GeometryA,
    double GeometryB,
    double Contact,
    double SolidA,
    double SolidB);
