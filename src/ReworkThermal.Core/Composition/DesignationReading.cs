namespace ReworkThermal.Core.Composition;

/// <summary>What came of reading an alloy designation.</summary>
public abstract record DesignationReading
{
    private DesignationReading()
    {
    }

    /// <summary>The text names a composition that can be modelled.</summary>
    /// <param name="Fractions">The composition.</param>
    /// <param name="Notes">What was assumed on the way, one sentence each.</param>
    public sealed record Accepted(MassFractions Fractions, IReadOnlyList<string> Notes) : DesignationReading;

    /// <summary>The text cannot be used.</summary>
    /// <param name="Reason">One sentence: what is wrong and what would be right.</param>
    public sealed record Refused(string Reason) : DesignationReading;
}
