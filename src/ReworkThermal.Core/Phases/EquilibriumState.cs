using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>Phases of one composition in equilibrium at one temperature.</summary>
/// <param name="Temperature">The temperature.</param>
/// <param name="Phases">Phases with their shares of the mass, the liquid first.</param>
/// <param name="LiquidMassFraction">Share of the mass that is liquid [kg/kg], 0 to 1.</param>
/// <param name="Enthalpy">Specific enthalpy; zero for the stable solid elements at 298.15 K.</param>
/// <param name="DeepestPhase">
/// Certificate: by how much any phase, searched from several starts, lies under the tangent plane; at most 1e-3 J/mol.
/// </param>
public sealed record EquilibriumState(
    Temperature Temperature,
    IReadOnlyList<PhaseShare> Phases,
    double LiquidMassFraction,
    SpecificEnergy Enthalpy,
    MolarEnergy DeepestPhase);
