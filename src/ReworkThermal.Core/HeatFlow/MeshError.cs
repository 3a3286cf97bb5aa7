namespace ReworkThermal.Core.HeatFlow;

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
