using UnitsNet;

namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>What a resistance meter showed.</summary>
public abstract record MeterReading
{
    private MeterReading()
    {
    }

    /// <summary>A resistance.</summary>
    /// <param name="Resistance">Zero or more.</param>
    public sealed record Shown(ElectricResistance Resistance) : MeterReading;

    /// <summary>More than the meter can show.</summary>
    public sealed record OverRange : MeterReading;
}
