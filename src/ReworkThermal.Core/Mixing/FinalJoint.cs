using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>A joint after passes and refit.</summary>
/// <param name="Passes">Number of passes before the refit.</param>
/// <param name="Removed">Share of the molten solder that each pass was taken to remove.</param>
/// <param name="Residue">What the last pass left.</param>
/// <param name="Joint">The refitted joint.</param>
/// <param name="Melting">How it melts.</param>
/// <param name="Freezing">How it freezes on real cooling.</param>
public sealed record FinalJoint(
    int Passes,
    Ratio Removed,
    SolderCharge Residue,
    SolderCharge Joint,
    MeltingBehaviour Melting,
    ScheilPath Freezing)
{
    /// <summary>Share of the mass still liquid at <see cref="CleaningQuestion.LowMelting"/> on real cooling.</summary>
    public Ratio LowMeltingShare => Ratio.FromDecimalFractions(Freezing.LiquidMassFractionAt(CleaningQuestion.LowMelting));

    /// <summary>Whether the low-melting share is small enough.</summary>
    public bool IsClean => LowMeltingShare <= CleaningQuestion.MostLowMelting;
}
