using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>State of a solder at one temperature, in equilibrium.</summary>
/// <param name="Temperature">The temperature.</param>
/// <param name="LiquidFraction">Share of the mass that is liquid [kg/kg].</param>
/// <param name="Enthalpy">Enthalpy; zero for the stable solid elements at 298.15 K.</param>
/// <param name="Phases">Names of the stable phases.</param>
public sealed record CurvePoint(Temperature Temperature, double LiquidFraction, SpecificEnergy Enthalpy, IReadOnlyList<string> Phases);
