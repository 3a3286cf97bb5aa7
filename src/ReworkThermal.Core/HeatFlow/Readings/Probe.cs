using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>Something to watch during a run: reads one temperature [K] off the state of a system.</summary>
internal abstract class Probe(string name)
{
    internal string Name { get; } = name;

    internal abstract double Read(ThermalSystem system, ReadOnlySpan<double> bodyK);

    /// <summary>A lumped body.</summary>
    internal sealed class Body(string name, int index) : Probe(name)
    {
        internal override double Read(ThermalSystem system, ReadOnlySpan<double> bodyK) => bodyK[index];
    }

    /// <summary>Face or sensor of the tip that touches, or touched last.</summary>
    internal sealed class Tool(string name, JointBench bench, int offset) : Probe(name)
    {
        internal override double Read(ThermalSystem system, ReadOnlySpan<double> bodyK) => bodyK[bench.LastFace + offset];
    }

    /// <summary>The coldest of some cells.</summary>
    internal sealed class Coldest(string name, int[] cells) : Probe(name)
    {
        internal override double Read(ThermalSystem system, ReadOnlySpan<double> bodyK)
        {
            ReadOnlySpan<double> kelvin = system.CellTemperaturesK;
            double coldest = double.PositiveInfinity;
            foreach (int cell in cells)
            {
                coldest = Math.Min(coldest, kelvin[cell]);
            }

            return coldest;
        }
    }

    /// <summary>A weighted mean of some cells.</summary>
    internal sealed class Mean(string name, int[] cells, double[] weights) : Probe(name)
    {
        internal override double Read(ThermalSystem system, ReadOnlySpan<double> bodyK)
        {
            ReadOnlySpan<double> kelvin = system.CellTemperaturesK;
            double sum = 0;
            double weight = 0;
            for (int i = 0; i < cells.Length; i++)
            {
                sum += weights[i] * kelvin[cells[i]];
                weight += weights[i];
            }

            return sum / weight;
        }
    }

    /// <summary>A point; between cell centres the profile keeps the flux continuous through the face.</summary>
    internal sealed class Point(string name, double radiusM, double heightM) : Probe(name)
    {
        internal override double Read(ThermalSystem system, ReadOnlySpan<double> bodyK) => new PointReader(system).At(radiusM, heightM);
    }
}
