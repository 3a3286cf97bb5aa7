namespace ReworkThermal.Core.Mixing;

/// <summary>What came of mixing one alloy in one amount.</summary>
public abstract record DilutionOutcome
{
    private DilutionOutcome()
    {
    }

    /// <summary>The mix and how it melts.</summary>
    /// <param name="Choice">The mix.</param>
    public sealed record Mixed(DilutionChoice Choice) : DilutionOutcome;

    /// <summary>The melting of the mix could not be computed.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record Failed(string Reason) : DilutionOutcome;
}
