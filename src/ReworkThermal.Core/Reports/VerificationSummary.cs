using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Verification;

namespace ReworkThermal.Core.Reports;

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
