namespace ReworkThermal.Data.Store;

/// <summary>What a restored store holds, and where the one before it is.</summary>
/// <param name="Store">Full path of the store.</param>
/// <param name="Jobs">Number of jobs.</param>
/// <param name="Entries">Number of entries.</param>
/// <param name="Kept">Full path of the copy of the store before, or null when there was none.</param>
public sealed record RestoreSummary(string Store, int Jobs, int Entries, string? Kept);
