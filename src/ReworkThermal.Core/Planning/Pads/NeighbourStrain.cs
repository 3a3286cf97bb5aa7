using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Readings;

namespace ReworkThermal.Core.Planning.Pads;

/// <summary>What a plan does to a part near the joint that comes near or past one of its limits.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Kind">Which limit.</param>
/// <param name="Worst">The most that the part gets, first pass or refit, in <paramref name="Unit"/>.</param>
/// <param name="Doubtful">From here on the limit is in doubt.</param>
/// <param name="Most">The limit itself.</param>
/// <param name="Unit">Unit of the three figures.</param>
public sealed record NeighbourStrain(string Part, NeighbourStrainKind Kind, double Worst, double Doubtful, double Most, string Unit)
{
    /// <summary>Whether the limit itself is passed.</summary>
    public bool IsOver => Worst > Most;

    /// <summary>Strains of all parts and of the plastic of the part itself, each limit once, over the touches of a plan.</summary>
    internal static IReadOnlyList<NeighbourStrain> Of(JointSite site, IReadOnlyList<NeighbourReport> first, IReadOnlyList<NeighbourReport> refit)
    {
        IReadOnlyList<Neighbour> parts = site.Neighbours;
        List<NeighbourStrain> strains = [];
        for (int i = 0; i < parts.Count; i++)
        {
            Neighbour part = parts[i];
            Add(part.Name, NeighbourStrainKind.Temperature, Math.Max(first[i].PeakCelsius, refit[i].PeakCelsius), part.MostTemperature?.Low.DegreesCelsius, part.MostTemperature?.Central.DegreesCelsius, "°C");
            Add(part.Name, NeighbourStrainKind.Difference, Math.Max(first[i].PeakDifferenceK, refit[i].PeakDifferenceK), part.MostDifference?.Low.Kelvins, part.MostDifference?.Central.Kelvins, "K");
            Add(part.Name, NeighbourStrainKind.Rate, Math.Max(first[i].PeakRateKPerS, refit[i].PeakRateKPerS), part.MostRate?.Low.DegreesCelsiusPerSecond, part.MostRate?.Central.DegreesCelsiusPerSecond, "K/s");
        }

        if (site.Connector is { PlasticLimit: { } limit } connector)
        {
            // The body is reported after the neighbours.
            Add(connector.Name, NeighbourStrainKind.Temperature, Math.Max(first[^1].PeakCelsius, refit[^1].PeakCelsius), limit.Low.DegreesCelsius, limit.Central.DegreesCelsius, "°C");
        }

        return strains;

        void Add(string name, NeighbourStrainKind kind, double worst, double? doubtful, double? most, string unit)
        {
            if (doubtful is { } low && most is { } central && worst > low)
            {
                strains.Add(new NeighbourStrain(name, kind, worst, low, central, unit));
            }
        }
    }
}

/// <summary>What a part near the joint may bear only so much of.</summary>
public enum NeighbourStrainKind
{
    /// <summary>Its temperature.</summary>
    Temperature,

    /// <summary>The difference of temperature over its length.</summary>
    Difference,

    /// <summary>How fast it is heated.</summary>
    Rate,
}
