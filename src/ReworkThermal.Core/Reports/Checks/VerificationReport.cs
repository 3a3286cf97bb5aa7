using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Verification;

namespace ReworkThermal.Core.Reports.Checks;

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

/// <summary>What was verified in one area.</summary>
/// <param name="Area">The area.</param>
/// <param name="Binding">Figures that count; the one that uses up most of its room first.</param>
/// <param name="Informative">Figures for information; the greatest deviation first.</param>
public sealed record VerificationSummary(VerificationArea Area, IReadOnlyList<ComparedValue> Binding, IReadOnlyList<ComparedValue> Informative)
{
    /// <summary>How many of the figures that count were met.</summary>
    public int Met => Binding.Count(f => f.Agreement == Agreement.Within);

    /// <summary>How many of the figures that count came to this project in a given way.</summary>
    /// <param name="mark">The way.</param>
    /// <returns>Their number.</returns>
    public int CountOf(EvidenceMark mark) => Binding.Count(f => f.Published.Provenance.Mark == mark);
}
