using System.Runtime.Serialization;

namespace ReworkThermal.Core.Damage;

/// <summary>The separate gauges of a pad.</summary>
public enum GaugeKind
{
    /// <summary>Damage sum of the laminate against its time to delamination.</summary>
    [EnumMember(Value = "laminate")]
    Laminate,

    /// <summary>Share of the bond between pad and laminate that is lost.</summary>
    [EnumMember(Value = "adhesion")]
    Adhesion,

    /// <summary>Spare copper of the knee or the land that is dissolved.</summary>
    [EnumMember(Value = "copper")]
    Copper,

    /// <summary>Fatigue of the plated barrel.</summary>
    [EnumMember(Value = "barrel")]
    Barrel,

    /// <summary>Number of melts against published tests.</summary>
    [EnumMember(Value = "melts")]
    Melts,
}
