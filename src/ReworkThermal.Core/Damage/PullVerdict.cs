namespace ReworkThermal.Core.Damage;

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
