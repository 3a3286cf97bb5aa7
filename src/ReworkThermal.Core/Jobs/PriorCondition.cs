namespace ReworkThermal.Core.Jobs;

/// <summary>What is assumed about heat a pad had before it arrived; stated by a person from what they see.</summary>
public enum PriorCondition
{
    /// <summary>Assembly only: no sign of later work.</summary>
    Sound,

    /// <summary>Reworked before: flux residue, uneven fillets, but no discolouration.</summary>
    Touched,

    /// <summary>Discoloured or blistered laminate.</summary>
    Scorched,
}
