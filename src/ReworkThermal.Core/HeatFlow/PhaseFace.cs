namespace ReworkThermal.Core.HeatFlow;

/// <summary>A face at a cell that melts: its conductance follows the liquid fraction.</summary>
/// <param name="Target">Vector that holds the conductance.</param>
/// <param name="Place">Place in that vector.</param>
/// <param name="SlotA">Slot of the first cell when it melts, or -1.</param>
/// <param name="SlotB">Slot of the second cell when it melts, or -1.</param>
/// <param name="GeometryA">Half-cell resistance of the first cell times its conductivity [1/m].</param>
/// <param name="GeometryB">Half-cell resistance of the second cell times its conductivity [1/m].</param>
/// <param name="Fixed">Resistance that does not change: a contact, and the half cell that does not melt [K/W].</param>
internal readonly record struct PhaseFace(double[] Target, int Place, int SlotA, int SlotB, double GeometryA, double GeometryB, double Fixed);
