namespace ReworkThermal.Core.Phases;

/// <summary>A phase in an alloy, with its share.</summary>
/// <param name="Name">Name in the data files, such as <c>BCT_A5</c>.</param>
/// <param name="ShownAs">What a reader calls it, such as "(Sn)".</param>
/// <param name="MassFraction">Share of the mass [kg/kg], 0 to 1.</param>
/// <param name="Composition">Its composition by mass.</param>
public sealed record PhaseShare(string Name, string ShownAs, double MassFraction, Composition.MassFractions Composition);
