using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>One set of equivalent sites in a phase.</summary>
/// <param name="Sites">Sites per formula unit, above 0.</param>
/// <param name="Constituents">Elements that may sit there, at least one.</param>
public sealed record Sublattice(double Sites, IReadOnlyList<Element> Constituents);
