using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>
/// Interaction of three elements on the only sublattice: y_i y_j y_k (v_i L_i + v_j L_j + v_k L_k) [J/mol] with
/// v_i = y_i + (1 - y_i - y_j - y_k) / 3, the weights of Muggianu (Y.M. Muggianu, M. Gambino, J.P. Bros, J. Chim. Phys. 72 (1975) 83).
/// </summary>
/// <param name="Elements">i, j, k.</param>
/// <param name="Coefficients">L_i, L_j, L_k; three equal ones are a symmetric term.</param>
public sealed record TernaryInteraction(IReadOnlyList<Element> Elements, IReadOnlyList<TemperatureExpression> Coefficients);
