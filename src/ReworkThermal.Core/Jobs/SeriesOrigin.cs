using System.Runtime.Serialization;

namespace ReworkThermal.Core.Jobs;

/// <summary>Where the temperatures of a series come from.</summary>
public enum SeriesOrigin
{
    /// <summary>Computed; kept within a stated error.</summary>
    [EnumMember(Value = "simulated")]
    Simulated,

    /// <summary>Measured; kept exactly.</summary>
    [EnumMember(Value = "measured")]
    Measured,
}
