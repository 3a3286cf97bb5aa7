using ReworkThermal.Core.Verification;

namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "are the numbers right?": every shipped published figure beside the one computed here.</summary>
/// <param name="Figures">All comparisons.</param>
public sealed record VerificationReport(IReadOnlyList<ComparedValue> Figures)
{
    /// <summary>Whether every figure that counts was met.</summary>
    public bool AllMet => Figures.All(f => f.Agreement != Agreement.Outside);

    /// <summary>The areas in order, each with its figures that count, the worst first.</summary>
    public IReadOnlyList<VerificationSummary> Areas =>
        [.. Enum.GetValues<VerificationArea>().Select(area => new VerificationSummary(
            area,
            [.. Figures.Where(f => f.Published.Area == area && f.Binds).OrderByDescending(f => f.RoomUsed)],
            [.. Figures.Where(f => f.Published.Area == area && !f.Binds).OrderByDescending(f => Math.Abs(f.Deviation ?? double.PositiveInfinity))]))];
}
