using System.Runtime.Serialization;

namespace ReworkThermal.Core.Jobs;

/// <summary>What is assumed about heat a pad had before it arrived; stated by a person from what they see.</summary>
public enum PriorCondition
{
    /// <summary>Assembly only: no sign of later work.</summary>
    [EnumMember(Value = "sound")]
    Sound,

    /// <summary>Reworked before: flux residue, uneven fillets, but no discolouration.</summary>
    [EnumMember(Value = "touched")]
    Touched,

    /// <summary>Discoloured or blistered laminate.</summary>
    [EnumMember(Value = "scorched")]
    Scorched,
}
