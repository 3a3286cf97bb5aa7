using System.Runtime.Serialization;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>An outer face of the modelled body.</summary>
public enum ThermalFace
{
    /// <summary>Upper face; positions on it are radii.</summary>
    [EnumMember(Value = "top")]
    Top,

    /// <summary>Lower face; positions on it are radii.</summary>
    [EnumMember(Value = "bottom")]
    Bottom,

    /// <summary>Outer rim; positions on it are heights.</summary>
    [EnumMember(Value = "rim")]
    Rim,

    /// <summary>Wall of a central bore; positions on it are heights.</summary>
    [EnumMember(Value = "bore")]
    Bore,
}
