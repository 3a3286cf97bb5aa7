using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "what is the joint made of after these passes, and how many are enough?".</summary>
/// <param name="Joint">Name of the joint.</param>
/// <param name="Before">Solder in the joint before the first pass.</param>
/// <param name="Alloy">Name of the dilution alloy.</param>
/// <param name="Added">Metal added in the first pass.</param>
/// <param name="Flush">Name of what later passes fill the joint up with.</param>
/// <param name="Refill">Name of the refill alloy.</param>
/// <param name="Asked">The joint after the passes asked for and the refit.</param>
/// <param name="Final">How that joint melts.</param>
/// <param name="ByPasses">The joint after 1, 2, ... passes.</param>
/// <param name="Enough">Passes that make the joint clean; null when the most considered are not enough.</param>
/// <param name="EnoughAtBest">The same when every pass removes the most it usually does.</param>
/// <param name="EnoughAtWorst">The same when every pass removes the least it usually does.</param>
/// <param name="Removal">How solder is taken out.</param>
/// <param name="Cautions">Hazards, one sentence each.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record CleaningReport(
    string Joint,
    SolderCharge Before,
    string Alloy,
    Mass Added,
    string Flush,
    string Refill,
    FinalJoint Asked,
    MeltReport Final,
    IReadOnlyList<FinalJoint> ByPasses,
    int? Enough,
    int? EnoughAtBest,
    int? EnoughAtWorst,
    RemovalMethod Removal,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources)
{
    /// <summary>Mass of what the last pass left, as a share of the full joint [1].</summary>
    public double ResidueFraction => Asked.Residue.Amount / Before.Amount;

    /// <summary>Composition of the final joint by mass.</summary>
    public MassFractions FinalMix => Asked.Joint.Fractions;
}
