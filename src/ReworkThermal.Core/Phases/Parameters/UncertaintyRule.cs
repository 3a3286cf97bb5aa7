namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>How the uncertainty of a melting temperature grows with the number of elements and with weakly supported systems.</summary>
/// <param name="BinaryKelvin">For one or two elements in assessed systems [K].</param>
/// <param name="TernaryKelvin">For three elements [K].</param>
/// <param name="HigherKelvin">For four and more [K].</param>
/// <param name="FullWeightMoleFraction">
/// A system counts fully once its scarcest element reaches this mole fraction, and in proportion below it.
/// </param>
public sealed record UncertaintyRule(double BinaryKelvin, double TernaryKelvin, double HigherKelvin, double FullWeightMoleFraction);
