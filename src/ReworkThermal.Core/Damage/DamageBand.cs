using System.Runtime.Serialization;

namespace ReworkThermal.Core.Damage;

/// <summary>How a pad stands, from what it has had. The borders are judgement.</summary>
public enum DamageBand
{
    /// <summary>Little used.</summary>
    [EnumMember(Value = "low")]
    Low,

    /// <summary>Noticeably used: plan the remaining touches.</summary>
    [EnumMember(Value = "raised")]
    Raised,

    /// <summary>Nearly used up: only what is necessary.</summary>
    [EnumMember(Value = "high")]
    High,

    /// <summary>Used up: heat this pad no further.</summary>
    [EnumMember(Value = "stop")]
    Stop,
}
