using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>
/// A tip as a source of heat: half its heat capacity at the sensor, which the heater holds at the set temperature as long as its power
/// suffices, half at the working face, with the shaft's resistance between them and a contact conductance to the joint.
/// </summary>
public sealed record TipSource
{
    /// <summary>Name for reports.</summary>
    public required string Name { get; init; }

    /// <summary>Set temperature; the tip has it when it is put on for the first time.</summary>
    public required Temperature Set { get; init; }

    /// <summary>Greatest heater power, above zero.</summary>
    public required Power PowerLimit { get; init; }

    /// <summary>Heat capacity of the tip, above zero.</summary>
    public required Entropy HeatCapacity { get; init; }

    /// <summary>Resistance between sensor and working face [K/W], above zero.</summary>
    public required double SensorToFaceKelvinPerWatt { get; init; }

    /// <summary>Contact over the wetted area, as it wets.</summary>
    public required ContactGrowth Contact { get; init; }

    /// <summary>Radius of the working face; the pad limits the wetted area further.</summary>
    public required Length FaceRadius { get; init; }
}
