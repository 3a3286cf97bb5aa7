namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>Estimates the error that the mesh leaves, from a run on a mesh and one on the doubled mesh.</summary>
internal static class MeshError
{
    /// <summary>
    /// The finer run with its error: a third of the largest difference of any probe, since the error of a second-order scheme falls to
    /// a quarter on doubling (Richardson extrapolation; Roache, Verification and Validation in Computational Science and Engineering, 1998).
    /// </summary>
    /// <remarks>The first 2 % of the run are left out: there a front crosses a cell before either mesh can show it.</remarks>
    internal static HeatRun Stated(HeatRun coarse, HeatRun fine)
    {
        double largest = 0;
        double from = 0.02 * fine.Seconds[^1];
        foreach ((string name, TemperatureHistory history) in fine.Probes)
        {
            if (!coarse.Probes.TryGetValue(name, out TemperatureHistory? other))
            {
                continue;
            }

            for (int i = 0; i < history.Seconds.Length; i++)
            {
                if (history.Seconds[i] < from)
                {
                    continue;
                }

                largest = Math.Max(largest, Math.Abs(history.Celsius[i] - other.At(history.Seconds[i])));
            }
        }

        return fine with { Mesh = fine.Mesh with { ErrorEstimateK = largest / 3 } };
    }
}

/// <summary>How a run was discretised.</summary>
/// <param name="RadialCells">Cells along r.</param>
/// <param name="AxialCells">Cells along z.</param>
/// <param name="Steps">Time steps taken.</param>
/// <param name="Rejections">Steps thrown away and repeated shorter.</param>
/// <param name="Factorisations">Factorisations of the matrix, whole and of its tail.</param>
/// <param name="Solves">Solves with a factored matrix.</param>
/// <param name="ErrorEstimateK">Estimated error of the probe temperatures from doubling the mesh, after the first 2 % of the run [K]; null when it was not asked for.</param>
public sealed record MeshReport(int RadialCells, int AxialCells, int Steps, int Rejections, int Factorisations, int Solves, double? ErrorEstimateK);
