using System.Runtime.Serialization;

namespace ReworkThermal.Core.Damage;

/// <summary>How a lead is taken out of its joint, gentlest first.</summary>
public enum PullDemand
{
    /// <summary>It comes by itself.</summary>
    [EnumMember(Value = "free lead")]
    Free,

    /// <summary>It is nudged.</summary>
    [EnumMember(Value = "nudged lead")]
    Nudged,

    /// <summary>It is pried.</summary>
    [EnumMember(Value = "pried lead")]
    Pried,
}
