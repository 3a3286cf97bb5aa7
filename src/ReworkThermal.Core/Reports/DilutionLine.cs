using UnitsNet;

namespace ReworkThermal.Core.Reports;

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
