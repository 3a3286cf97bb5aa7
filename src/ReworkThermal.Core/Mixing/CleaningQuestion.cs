using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>How many passes does it take, and what is the refitted joint made of?</summary>
/// <param name="Joint">Solder in the joint before the first pass.</param>
/// <param name="Dilution">What the first pass adds.</param>
/// <param name="Flush">Composition that each later pass fills the joint up with.</param>
/// <param name="Refill">Composition of the refit.</param>
/// <param name="Removal">How molten solder is taken out.</param>
/// <param name="MostPasses">Most passes to consider, at least one.</param>
public sealed record CleaningQuestion(
    SolderCharge Joint,
    SolderCharge Dilution,
    MassFractions Flush,
    MassFractions Refill,
    RemovalMethod Removal,
    int MostPasses)
{
    /// <summary>
    /// Temperature at which liquid left on real cooling counts as low-melting: above both the bismuth-lead-tin (96 °C) and the bismuth-tin
    /// (139 °C) eutectics, below every joint that is meant to be soldered.
    /// </summary>
    public static readonly Temperature LowMelting = Temperature.FromDegreesCelsius(140);

    /// <summary>Greatest low-melting share of a joint that counts as clean: 0.1 % by mass; judgement.</summary>
    public static readonly Ratio MostLowMelting = Ratio.FromPercent(0.1);
}
