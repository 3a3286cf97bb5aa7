using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>How a heat-flow run was discretised.</summary>
/// <param name="RadialCells">Cells along the radius.</param>
/// <param name="AxialCells">Cells through the thickness.</param>
/// <param name="Steps">Time steps taken.</param>
/// <param name="Error">Error of the temperatures shown that the mesh leaves, estimated from a run on a mesh half as fine; null when it was not asked for.</param>
public sealed record HeatMesh(int RadialCells, int AxialCells, int Steps, TemperatureDelta? Error);
