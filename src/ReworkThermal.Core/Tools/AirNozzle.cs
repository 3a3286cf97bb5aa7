using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>A round hot-air nozzle.</summary>
public sealed record AirNozzle
{
    /// <summary>Name for reports.</summary>
    public required string Name { get; init; }

    /// <summary>Bore of the nozzle.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Least free-air flow.</summary>
    public required VolumeFlow LeastFlow { get; init; }

    /// <summary>Greatest free-air flow.</summary>
    public required VolumeFlow MostFlow { get; init; }

    /// <summary>Highest temperature it can be set to.</summary>
    public required Temperature MostSetting { get; init; }

    /// <summary>
    /// Share of the nozzle's excess over room temperature that is left in the gas at the board after it has drawn in room air, 0 to 1.
    /// The jet correlation has no formula for it.
    /// </summary>
    public required Estimate<double> ExcessKept { get; init; }
}
