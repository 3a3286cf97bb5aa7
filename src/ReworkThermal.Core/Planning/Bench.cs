using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>What is on the bench for one job.</summary>
public sealed record Bench
{
    /// <summary>The room: temperature and still air.</summary>
    public required Surroundings Room { get; init; }

    /// <summary>Irons with their tips; at least one.</summary>
    public required IReadOnlyList<Iron> Irons { get; init; }

    /// <summary>How well the tip meets the joint.</summary>
    public required TipContact Contact { get; init; }

    /// <summary>Hot-air nozzles with flow and distance; may be empty.</summary>
    public IReadOnlyList<HotAir> Air { get; init; } = [];

    /// <summary>Board heaters; may be empty.</summary>
    public required IReadOnlyList<Preheater> Preheaters { get; init; }

    /// <summary>Alloys at hand for dilution; may be empty.</summary>
    public required IReadOnlyList<Alloy> Dilutions { get; init; }

    /// <summary>How molten solder is taken out.</summary>
    public required RemovalMethod Removal { get; init; }

    /// <summary>Diameter of the wire that alloys come in, for amounts in millimetres.</summary>
    public required Length WireDiameter { get; init; }

    /// <summary>Share of the wire's mass that is flux.</summary>
    public required Ratio WireFlux { get; init; }

    /// <summary>Density of the flux.</summary>
    public required Density FluxDensity { get; init; }
}
