using System.Runtime.Serialization;

namespace ReworkThermal.Core.Tools;

/// <summary>How a tip meets the joint. The state decides the contact conductance, the largest uncertainty of a hand-soldering model.</summary>
public enum ContactState
{
    /// <summary>Dry or oxidised: poor wetting.</summary>
    [EnumMember(Value = "bare")]
    Bare,

    /// <summary>Ordinary tinned tip.</summary>
    [EnumMember(Value = "tinned")]
    Tinned,

    /// <summary>Fresh solder and flux flood the gap.</summary>
    [EnumMember(Value = "flooded")]
    Flooded,
}
