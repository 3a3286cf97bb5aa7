using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>A point of a melt curve.</summary>
/// <param name="Temperature">The temperature.</param>
/// <param name="LiquidMassFraction">Share of the mass that is liquid [kg/kg], 0 to 1.</param>
/// <param name="Enthalpy">Specific enthalpy; zero for the stable solid elements at 298.15 K.</param>
/// <param name="Phases">Phases with their shares of the mass, the liquid first.</param>
public sealed record MeltCurvePoint(Temperature Temperature, double LiquidMassFraction, SpecificEnergy Enthalpy, IReadOnlyList<PhaseShare> Phases);
