namespace ReworkThermal.Core.Jobs;

/// <summary>A job at a glance.</summary>
/// <param name="Id">The job.</param>
/// <param name="Brief">What it is about, as last revised.</param>
/// <param name="Status">Whether work may be recorded.</param>
/// <param name="OpenedAt">When it was opened.</param>
/// <param name="LastAt">When its last entry was recorded.</param>
/// <param name="LastNumber">Number of its last entry.</param>
public sealed record JobHeader(JobId Id, JobBrief Brief, JobStatus Status, DateTimeOffset OpenedAt, DateTimeOffset LastAt, int LastNumber);
