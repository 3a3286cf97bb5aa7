using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>A reaction at a fixed temperature, with its published figures.</summary>
/// <param name="Reaction">In words, such as "L = (Pb) + (Sn)".</param>
/// <param name="Phases">Names of the phases that coexist, the liquid included.</param>
/// <param name="Through">Composition whose cooling passes through the reaction.</param>
/// <param name="Celsius">Published temperature [°C].</param>
/// <param name="ToleranceKelvin">Allowed difference [K]; at least the published uncertainty.</param>
/// <param name="Liquid">Published composition of the liquid, or null when only the temperature is known.</param>
/// <param name="LiquidTolerance">Allowed difference of each mass fraction of the liquid [kg/kg]; 0 without composition.</param>
/// <param name="ComputedCelsius">What this set of parameters gives [°C]; a drift from it is an error in the program or the file.</param>
/// <param name="Provenance">Source of the published figures.</param>
/// <param name="Note">Explanation, in words; empty when none is needed.</param>
public sealed record ListedInvariant(
    string Reaction,
    IReadOnlyList<string> Phases,
    MassFractions Through,
    double Celsius,
    double ToleranceKelvin,
    MassFractions? Liquid,
    double LiquidTolerance,
    double ComputedCelsius,
    Provenance Provenance,
    string Note);
