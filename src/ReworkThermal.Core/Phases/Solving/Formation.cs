namespace ReworkThermal.Core.Phases.Solving;

/// <summary>A phase forming on cooling.</summary>
/// <param name="Before">The phases it forms among, at that temperature.</param>
/// <param name="Joining">The phase that forms.</param>
internal sealed record Formation(Assemblage Before, PhaseState Joining);
