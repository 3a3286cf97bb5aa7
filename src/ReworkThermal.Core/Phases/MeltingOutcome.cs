namespace ReworkThermal.Core.Phases;

/// <summary>What came of computing the melting behaviour of a composition.</summary>
public abstract record MeltingOutcome
{
    private MeltingOutcome()
    {
    }

    /// <summary>The melting behaviour.</summary>
    /// <param name="Behaviour">Temperatures, melt curve and caveats.</param>
    public sealed record Found(MeltingBehaviour Behaviour) : MeltingOutcome;

    /// <summary>The computation did not converge.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record NotConverged(string Reason) : MeltingOutcome;

    /// <summary>The composition is outside the model.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record OutsideModel(string Reason) : MeltingOutcome;
}
