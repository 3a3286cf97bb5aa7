namespace ReworkThermal.Core.Phases;

/// <summary>What came of computing the equilibrium of one composition at one temperature.</summary>
public abstract record EquilibriumOutcome
{
    private EquilibriumOutcome()
    {
    }

    /// <summary>The equilibrium was found, and no phase lies under its tangent plane.</summary>
    /// <param name="State">The equilibrium with its certificate.</param>
    public sealed record Converged(EquilibriumState State) : EquilibriumOutcome;

    /// <summary>No equilibrium could be certified.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record NotConverged(string Reason) : EquilibriumOutcome;

    /// <summary>The temperature or the composition is outside what the data cover.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record OutsideRange(string Reason) : EquilibriumOutcome;
}
