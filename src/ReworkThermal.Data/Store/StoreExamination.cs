namespace ReworkThermal.Data.Store;

/// <summary>What an examination of a store found.</summary>
/// <param name="Jobs">Number of jobs.</param>
/// <param name="Entries">Number of entries that could be read.</param>
/// <param name="FormatVersion">Version of the file format.</param>
/// <param name="Problems">What is wrong, one sentence each; empty when the store is sound.</param>
public sealed record StoreExamination(int Jobs, int Entries, int FormatVersion, IReadOnlyList<string> Problems);
