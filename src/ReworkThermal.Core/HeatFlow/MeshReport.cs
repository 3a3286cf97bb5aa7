namespace ReworkThermal.Core.HeatFlow;

/// <summary>How a run was discretised.</summary>
/// <param name="RadialCells">Cells along r.</param>
/// <param name="AxialCells">Cells along z.</param>
/// <param name="Steps">Time steps taken.</param>
/// <param name="Rejections">Steps thrown away and repeated shorter.</param>
/// <param name="Factorisations">Factorisations of the matrix, whole and of its tail.</param>
/// <param name="Solves">Solves with a factored matrix.</param>
/// <param name="ErrorEstimateK">Estimated error of the probe temperatures from doubling the mesh, after the first 2 % of the run [K]; null when it was not asked for.</param>
public sealed record MeshReport(int RadialCells, int AxialCells, int Steps, int Rejections, int Factorisations, int Solves, double? ErrorEstimateK);
