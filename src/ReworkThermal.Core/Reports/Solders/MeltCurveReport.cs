using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>Answer to "how does this solder melt?": liquid fraction, enthalpy and phases against temperature.</summary>
/// <param name="Composition">What was asked about, by mass.</param>
/// <param name="Points">States by rising temperature, at least two.</param>
/// <param name="Uncertainty">Plus or minus on every temperature.</param>
/// <param name="Notes">What was assumed or left out, one sentence each.</param>
/// <param name="Sources">Citations of the assessments used.</param>
public sealed record MeltCurveReport(
    MassFractions Composition,
    IReadOnlyList<CurvePoint> Points,
    TemperatureDelta Uncertainty,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);

/// <summary>State of a solder at one temperature, in equilibrium.</summary>
/// <param name="Temperature">The temperature.</param>
/// <param name="LiquidFraction">Share of the mass that is liquid [kg/kg].</param>
/// <param name="Enthalpy">Enthalpy; zero for the stable solid elements at 298.15 K.</param>
/// <param name="Phases">Names of the stable phases.</param>
public sealed record CurvePoint(Temperature Temperature, double LiquidFraction, SpecificEnergy Enthalpy, IReadOnlyList<string> Phases);
