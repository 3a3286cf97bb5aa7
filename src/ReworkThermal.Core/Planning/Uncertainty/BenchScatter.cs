using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>
/// How far one bench differs from the next, where the profile of the thing itself gives no range. Start reading this folder here:
/// <see cref="UncertainInputs"/> gathers every input with a range, <see cref="PlanSampler"/> runs the first touch of a plan on many sampled benches,
/// <see cref="FlowSpread"/> says what came of it.
/// </summary>
public sealed record BenchScatter
{
    /// <summary>Temperature of the face of an idle tip above its setting.</summary>
    public required Estimate<TemperatureDelta> TipOffset { get; init; }

    /// <summary>Temperature of the air at the board above the stated room temperature.</summary>
    public required Estimate<TemperatureDelta> RoomOffset { get; init; }

    /// <summary>Temperature of the settled board above the one aimed at.</summary>
    public required Estimate<TemperatureDelta> BoardOffset { get; init; }

    /// <summary>Conductance of the planes over that of the stated copper coverage [1].</summary>
    public required Estimate<double> PlaneCoverage { get; init; }

    /// <summary>Conductance of the relief spokes over that of their drawn size [1].</summary>
    public required Estimate<double> Relief { get; init; }

    /// <summary>Solder in the joint over that of its drawn size [1].</summary>
    public required Estimate<double> SolderFill { get; init; }

    /// <summary>Coefficient of a hot-air jet over that of the correlation [1].</summary>
    public required Estimate<double> AirFilm { get; init; }

    /// <summary>Standard deviation of a time to flow taken by eye, as a share of the time [1].</summary>
    public required Estimate<double> TimingError { get; init; }

    /// <summary>Standard deviation of a thermocouple reading.</summary>
    public required Estimate<TemperatureDelta> ReadingError { get; init; }
}
