using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Reports.Plans;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Solders;

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

/// <summary>One alloy in one amount, and what the mix does.</summary>
/// <param name="Alloy">Name of the dilution alloy.</param>
/// <param name="Ratio">Mass share of the added alloy in the mix [kg/kg].</param>
/// <param name="AddedMass">Metal to add.</param>
/// <param name="WireLength">Length of wire that holds it, flux taken off; null when the alloy does not come as wire.</param>
/// <param name="Mix">The mix and its melting behaviour.</param>
/// <param name="Cautions">Hazards of this alloy or mix, one sentence each.</param>
public sealed record DilutionLine(
    string Alloy,
    double Ratio,
    Mass AddedMass,
    Length? WireLength,
    MeltReport Mix,
    IReadOnlyList<string> Cautions);

/// <summary>An alloy that was brought to a board, or arrived with it.</summary>
/// <param name="Designation">As it was written.</param>
/// <param name="Role">What it was for, one or two words.</param>
/// <param name="Touches">Number of touches that added it; zero for the solder on arrival.</param>
/// <param name="Added">Metal added, where it was logged; null when no mass was.</param>
/// <param name="LeadFraction">Lead by mass [kg/kg]; null when the designation cannot be read.</param>
public sealed record AlloyUse(string Designation, string Role, int Touches, Mass? Added, double? LeadFraction);
