using UnitsNet;

namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>What was seen.</summary>
public abstract record Sighting
{
    private Sighting()
    {
    }

    /// <summary>The whole joint flowed.</summary>
    /// <param name="After">Time from contact to flow, above zero.</param>
    public sealed record Flowed(Duration After) : Sighting;

    /// <summary>The whole joint flowed at some time before the tool came off; nobody saw when.</summary>
    /// <param name="Within">How long the tool was on, above zero.</param>
    public sealed record FlowedWithin(Duration Within) : Sighting;

    /// <summary>The joint did not flow.</summary>
    /// <param name="Within">How long was waited, above zero.</param>
    public sealed record NotFlowed(Duration Within) : Sighting;

    /// <summary>A thermocouple was read.</summary>
    /// <param name="Probe">Where, a name of <see cref="HeatFlow.Readings.ProbeNames"/>.</param>
    /// <param name="After">When, from contact, above zero.</param>
    /// <param name="Value">What it showed.</param>
    public sealed record Reading(string Probe, Duration After, Temperature Value) : Sighting;
}
