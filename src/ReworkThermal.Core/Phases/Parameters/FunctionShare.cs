namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>A multiple of a named function.</summary>
/// <param name="Function">Index into <see cref="ThermodynamicDatabase.Functions"/>.</param>
/// <param name="Times">Multiplier [mol/mol].</param>
public readonly record struct FunctionShare(int Function, double Times);
