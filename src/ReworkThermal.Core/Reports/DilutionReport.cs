using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "which alloy, and how much of it?": one line per alloy and amount, best first.</summary>
/// <param name="Joint">Name of the joint.</param>
/// <param name="BaseSolder">What is in the joint, by mass.</param>
/// <param name="SolderMass">How much of it.</param>
/// <param name="Lines">Alloys and amounts, best first.</param>
/// <param name="Excluded">What was left out, and why.</param>
/// <param name="Notes">What was assumed or left out, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record DilutionReport(
    string Joint,
    MassFractions BaseSolder,
    Mass SolderMass,
    IReadOnlyList<DilutionLine> Lines,
    IReadOnlyList<RuledOut> Excluded,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);
