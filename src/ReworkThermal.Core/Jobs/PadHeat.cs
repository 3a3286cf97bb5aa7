namespace ReworkThermal.Core.Jobs;

/// <summary>One exposure as one pad had it.</summary>
/// <param name="Number">Number of the entry that logged it.</param>
/// <param name="Touch">The whole touch.</param>
/// <param name="Share">What this pad had of it.</param>
public sealed record PadHeat(int Number, Exposure Touch, HeatedPad Share);
