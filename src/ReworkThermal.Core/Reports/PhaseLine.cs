using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>One phase that takes part in the melting of a solder.</summary>
/// <param name="Name">Name of the phase as the assessments use it, for example <c>BCT_A5</c>.</param>
/// <param name="Words">What it is at the bench, for example "tin-rich solid".</param>
/// <param name="From">Lowest temperature of the range looked at, at which it is stable.</param>
/// <param name="To">Highest temperature at which it is stable.</param>
/// <param name="GreatestShare">Greatest share of the mass it reaches in between [kg/kg].</param>
public sealed record PhaseLine(string Name, string Words, Temperature From, Temperature To, double GreatestShare);
