using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Planning;

/// <summary>A solder as a request names it.</summary>
/// <param name="Name">Name or designation.</param>
/// <param name="Fractions">Composition by mass.</param>
public sealed record NamedSolder(string Name, MassFractions Fractions);
