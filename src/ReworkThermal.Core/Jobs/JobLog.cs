namespace ReworkThermal.Core.Jobs;

/// <summary>Entries of one job in order; all of them, or the later ones.</summary>
/// <param name="Id">The job.</param>
/// <param name="Entries">The entries, numbered without gaps.</param>
public sealed record JobLog(JobId Id, IReadOnlyList<JobEntry> Entries);
