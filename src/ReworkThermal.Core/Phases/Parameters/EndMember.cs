using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>The phase with one element on each sublattice.</summary>
/// <param name="Occupation">One element per sublattice.</param>
/// <param name="Gibbs">Gibbs energy per formula unit [J/mol].</param>
public sealed record EndMember(IReadOnlyList<Element> Occupation, TemperatureExpression Gibbs);
