using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.Core.Reports.Checks;

/// <summary>Answer to "is the data in order?": one line per file and per recomputed value.</summary>
/// <param name="Lines">What was checked, file by file.</param>
public sealed record DataCheckReport(IReadOnlyList<CheckLine> Lines)
{
    /// <summary>Whether every check passed.</summary>
    public bool AllPassed => Lines.All(l => l.Outcome is not CheckOutcome.Failed and not CheckOutcome.Broken);

    /// <summary>Whether a file could not be read as what it should be.</summary>
    public bool AnyBroken => Lines.Any(l => l.Outcome is CheckOutcome.Broken);
}
