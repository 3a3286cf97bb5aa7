using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>Watches the solder cells: how much is liquid, how much is hot enough to flow.</summary>
internal sealed class SolderWatch(int[] cells, double[] volumes, double flowK, BarrelFront? front = null)
{
    private readonly double _volume = volumes.Sum();

    /// <summary>A watch on everything that melts; null when nothing does. There is no flow temperature.</summary>
    internal static SolderWatch? OfMelting(CellGrid grid)
    {
        List<int> cells = [];
        List<double> volumes = [];
        for (int i = 0; i < grid.Radial.Count; i++)
        {
            for (int j = 0; j < grid.Axial.Count; j++)
            {
                if (grid.MaterialAt(i, j)?.Melts == true)
                {
                    cells.Add(grid.Index(i, j));
                    volumes.Add(grid.Volume(i, j));
                }
            }
        }

        return cells.Count == 0 ? null : new SolderWatch([.. cells], [.. volumes], double.PositiveInfinity);
    }

    /// <summary>Share of the barrel's length that has flowed from the touched face on, 0 to 1; zero without a barrel.</summary>
    internal double FrontShare(ThermalSystem system) => front?.ShareOf(system) ?? 0;

    /// <summary>Volume share that is liquid, 0 to 1.</summary>
    internal double LiquidShare(ThermalSystem system)
    {
        double sum = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            sum += volumes[i] * system.Network.Phase.LiquidOf(cells[i]);
        }

        return sum / _volume;
    }

    /// <summary>Volume share at or above the flow temperature, 0 to 1.</summary>
    internal double FlowedShare(ThermalSystem system)
    {
        ReadOnlySpan<double> kelvin = system.CellTemperaturesK;
        double sum = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            sum += kelvin[cells[i]] >= flowK ? volumes[i] : 0;
        }

        return sum / _volume;
    }
}
