namespace ReworkThermal.App.Commands;

/// <summary>What was asked of <c>clean</c>, as it stands on the command line.</summary>
/// <param name="Joint">Which solder in which joint.</param>
/// <param name="With">Alloy that the first pass adds.</param>
/// <param name="Ratio">Its mass share in the mix; null when not named.</param>
/// <param name="Passes">Number of passes; null to find how many are enough.</param>
/// <param name="Refill">Composition of the refit.</param>
/// <param name="Removal">How molten solder is taken out; null when not named.</param>
internal sealed record CleaningWish(
    JointWish Joint,
    string With,
    double? Ratio,
    int? Passes,
    string Refill,
    string? Removal);
