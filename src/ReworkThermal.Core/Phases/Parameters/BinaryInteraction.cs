using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>
/// Redlich-Kister interaction of two elements on one sublattice: y_i y_j sum_v L_v (y_i - y_j)^v, per formula unit [J/mol].
/// (O. Redlich, A.T. Kister, Ind. Eng. Chem. 40 (1948) 345.)
/// </summary>
/// <param name="Sublattice">Index of the sublattice.</param>
/// <param name="First">Element i: odd powers change sign with the order.</param>
/// <param name="Second">Element j.</param>
/// <param name="Coefficients">L_0, L_1, ... [J/mol].</param>
public sealed record BinaryInteraction(int Sublattice, Element First, Element Second, IReadOnlyList<TemperatureExpression> Coefficients);
