namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Whether a wire fits its task.</summary>
public abstract record WireFitness
{
    private WireFitness()
    {
    }

    /// <summary>It fits even by the strict end of every limit.</summary>
    public sealed record Fit : WireFitness;

    /// <summary>It fits by the central limits, not by their strict end or not at the warm end of the estimate.</summary>
    /// <param name="Concerns">What is close, at least one.</param>
    public sealed record Close(IReadOnlyList<WireConcern> Concerns) : WireFitness;

    /// <summary>It does not fit.</summary>
    /// <param name="Concerns">Why, at least one.</param>
    public sealed record Unfit(IReadOnlyList<WireConcern> Concerns) : WireFitness;
}
