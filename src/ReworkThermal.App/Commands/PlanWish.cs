namespace ReworkThermal.App.Commands;

/// <summary>What the command line asks of a plan.</summary>
/// <param name="Path">The request.</param>
/// <param name="Samples">Benches to sample per plan; 0 for none.</param>
/// <param name="Job">Job that the pad belongs to; null for none.</param>
/// <param name="Pad">The pad as typed; null for none.</param>
/// <param name="Store">Job store; null for the usual one.</param>
/// <param name="Why">Number of the plan to explain; null for none.</param>
/// <param name="Compare">Numbers of two plans to set side by side; empty for none.</param>
internal sealed record PlanWish(string Path, int Samples, string? Job, string? Pad, string? Store, int? Why, int[] Compare);
