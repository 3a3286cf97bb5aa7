using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>Composition beyond which a system's parameters no longer describe the alloy.</summary>
/// <param name="Element">The element that is limited.</param>
/// <param name="MostMassFraction">Mass fraction above which the limit is passed [kg/kg].</param>
/// <param name="UncertaintyKelvin">Uncertainty [K] of a melting temperature beyond it.</param>
/// <param name="Caveat">Sentence to print beyond it.</param>
public sealed record SystemLimit(Element Element, double MostMassFraction, double UncertaintyKelvin, string Caveat);
