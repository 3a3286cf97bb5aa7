using System.Runtime.Serialization;

namespace ReworkThermal.Core.Evidence;

/// <summary>How well a number is supported. Every number in a data file carries one of these marks.</summary>
public enum EvidenceMark
{
    /// <summary>The figure was read in the named source.</summary>
    [EnumMember(Value = "seen")]
    Seen,

    /// <summary>A secondary source reports what the named source says.</summary>
    [EnumMember(Value = "second-hand")]
    SecondHand,

    /// <summary>Computed from a named formula and named inputs.</summary>
    [EnumMember(Value = "computed")]
    Computed,

    /// <summary>Well known, but written down from memory and not checked against the source.</summary>
    [EnumMember(Value = "memory")]
    Memory,

    /// <summary>Chosen by the authors of this project; no source.</summary>
    [EnumMember(Value = "judgement")]
    Judgement,

    /// <summary>Common practice, no source.</summary>
    [EnumMember(Value = "practice")]
    Practice,
}
