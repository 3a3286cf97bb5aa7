using System.Runtime.Serialization;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Pulling;

/// <summary>Whether a part may be lifted now.</summary>
public abstract record PullVerdict
{
    private PullVerdict()
    {
    }

    /// <summary>It may not.</summary>
    /// <param name="Joints">Joints that are below their flow temperature; empty when none of the part is known.</param>
    /// <param name="Reason">One sentence.</param>
    public sealed record DoNotPull(IReadOnlyList<string> Joints, string Reason) : PullVerdict;

    /// <summary>Every joint flows, but the pad is not sure to hold even a free lead.</summary>
    /// <param name="FreeLead">What the pad does against a free lead.</param>
    /// <param name="Reason">One sentence.</param>
    public sealed record LiftWithoutForce(PullOutcome FreeLead, string Reason) : PullVerdict;

    /// <summary>Every joint flows, and the pad holds some way of pulling over the whole range.</summary>
    /// <param name="Hardest">The hardest way of pulling that it holds.</param>
    /// <param name="Reason">One sentence.</param>
    public sealed record MayLift(PullDemand Hardest, string Reason) : PullVerdict;
}

/// <summary>What a pad can hold against one way of pulling.</summary>
/// <param name="Demand">The way of pulling.</param>
/// <param name="Force">Its force.</param>
/// <param name="Margin">Capacity over force: low with the least capacity and the greatest force, high the other way round; below 1 the
/// pad does not hold.</param>
/// <param name="Outcome">What the margin says.</param>
public sealed record PullMargin(PullDemand Demand, RatedEstimate<Force> Force, Spread Margin, PullOutcome Outcome);

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
