namespace ReworkThermal.Core.Reports;

/// <summary>What came of a check.</summary>
public abstract record CheckOutcome
{
    private CheckOutcome()
    {
    }

    /// <summary>In order.</summary>
    /// <param name="Remark">Figures worth showing; may be empty.</param>
    public sealed record Passed(string Remark) : CheckOutcome;

    /// <summary>The file can be read, but what it says does not hold.</summary>
    /// <param name="Reason">One sentence with the figures.</param>
    public sealed record Failed(string Reason) : CheckOutcome;

    /// <summary>The file cannot be used.</summary>
    /// <param name="Reason">One sentence with line and field.</param>
    public sealed record Broken(string Reason) : CheckOutcome;
}
