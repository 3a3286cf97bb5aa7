using System.Runtime.Serialization;

namespace ReworkThermal.Core.Damage;

/// <summary>What a margin says over its whole range.</summary>
public enum PullOutcome
{
    /// <summary>The pad holds even at the unfavourable end.</summary>
    [EnumMember(Value = "holds")]
    Holds,

    /// <summary>The pad holds at one end of the range and not at the other.</summary>
    [EnumMember(Value = "doubtful")]
    Doubtful,

    /// <summary>The pad does not hold even at the favourable end.</summary>
    [EnumMember(Value = "tears")]
    Tears,
}
