namespace ReworkThermal.Data.Store;

/// <summary>What an import added.</summary>
/// <param name="NewJobs">Jobs that were not there before.</param>
/// <param name="NewEntries">Entries that were added.</param>
/// <param name="KnownEntries">Entries that were there already.</param>
public sealed record ImportSummary(int NewJobs, int NewEntries, int KnownEntries);
