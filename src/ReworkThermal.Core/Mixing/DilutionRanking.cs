namespace ReworkThermal.Core.Mixing;

/// <summary>Answer to a <see cref="DilutionQuestion"/>.</summary>
/// <param name="Choices">The smallest amount of each alloy that reaches the target, least added mass first.</param>
/// <param name="Excluded">Alloys that were left out or do not reach the target, with the reason.</param>
public sealed record DilutionRanking(
    IReadOnlyList<DilutionChoice> Choices,
    IReadOnlyList<ExcludedAlloy> Excluded);
