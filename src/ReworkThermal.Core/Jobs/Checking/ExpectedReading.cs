namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>What a meter should show.</summary>
public abstract record ExpectedReading
{
    private ExpectedReading()
    {
    }

    /// <summary>Conducts to a place.</summary>
    /// <param name="Place">The destination, or null for ground or the shell as <paramref name="Kind"/> says.</param>
    /// <param name="Kind">Which kind of place.</param>
    public sealed record Conducts(string? Place, ReferencePoint Kind) : ExpectedReading;

    /// <summary>Does not conduct.</summary>
    public sealed record Open : ExpectedReading;
}
