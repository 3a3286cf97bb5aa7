using System.Runtime.Serialization;
using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Exposures;

/// <summary>
/// Heat that a pad has had in one touch, simulated or measured. A touch counts as at most one melt and one expansion, whatever its
/// history does in between; a touch that lets the joint freeze and melt again is two exposures.
/// </summary>
/// <param name="Interface">Temperature of the pad-to-laminate interface against time.</param>
/// <param name="Melted">Whether the joint melted.</param>
/// <param name="Charge">The solder on the pad; null when it did not melt or nothing is known of it, and copper is then not counted.</param>
/// <param name="Region">How much of the board was hot.</param>
/// <param name="Start">What went before.</param>
public sealed record PadExposure(
    TemperatureHistory Interface,
    bool Melted,
    MoltenContact? Charge,
    HeatedRegion Region,
    ExposureStart Start)
{
    /// <summary>A steady temperature on one joint.</summary>
    /// <param name="temperature">Interface temperature.</param>
    /// <param name="time">How long, not negative.</param>
    /// <param name="melted">Whether the joint melted.</param>
    /// <param name="charge">The solder, if known.</param>
    /// <param name="region">How much of the board was hot.</param>
    /// <param name="start">What went before.</param>
    /// <returns>The exposure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public static PadExposure Steady(
        Temperature temperature,
        Duration time,
        bool melted,
        MoltenContact? charge = null,
        HeatedRegion region = HeatedRegion.Local,
        ExposureStart start = ExposureStart.AfterCooling)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(time.Seconds, nameof(time));
        double celsius = temperature.DegreesCelsius;
        TemperatureHistory history = time.Seconds > 0 ? new([0, time.Seconds], [celsius, celsius]) : new([0], [celsius]);
        return new PadExposure(history, melted, charge, region, start);
    }

    /// <summary>Whether any time passes in this exposure.</summary>
    public bool TakesTime => Interface.Seconds[^1] > Interface.Seconds[0];
}

/// <summary>How much of the board is hot during an exposure.</summary>
public enum HeatedRegion
{
    /// <summary>One joint is heated; the board around it stays well below the glass transition.</summary>
    [EnumMember(Value = "local")]
    Local,

    /// <summary>The whole board around the joint passes the temperatures of the history, as in reflow or wave soldering.</summary>
    [EnumMember(Value = "board")]
    WholeBoard,
}

/// <summary>What went before an exposure.</summary>
public enum ExposureStart
{
    /// <summary>The joint had frozen and the board had cooled: a melt or an expansion now is a new one.</summary>
    AfterCooling,

    /// <summary>The exposure follows straight on the one before: a melt or an expansion that was going on is the same one.</summary>
    StraightOn,
}
