namespace ReworkThermal.Core.Planning;

/// <summary>What came of a plan request.</summary>
public abstract record PlanOutcome
{
    private PlanOutcome()
    {
    }

    /// <summary>What was considered and left out, and why.</summary>
    public required IReadOnlyList<RuledOut> RuledOut { get; init; }

    /// <summary>What the answer rests on, one sentence each.</summary>
    public required IReadOnlyList<string> Assumptions { get; init; }

    /// <summary>Plans that differ in kind.</summary>
    /// <param name="Plans">At least one, the smallest budget first.</param>
    public sealed record Planned(IReadOnlyList<Plan> Plans) : PlanOutcome;

    /// <summary>No plan holds every limit.</summary>
    /// <param name="Reason">Which limit blocks and by how much, one sentence.</param>
    public sealed record NoPlan(string Reason) : PlanOutcome;

    /// <summary>The answer could not be computed.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record Failed(string Reason) : PlanOutcome;
}
