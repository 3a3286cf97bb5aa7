namespace ReworkThermal.Core.Jobs;

/// <summary>One line of a job's record.</summary>
/// <param name="Number">Place in the job, from 1 without gaps; other entries refer to it.</param>
/// <param name="At">When it was recorded, UTC, whole milliseconds.</param>
/// <param name="What">What happened.</param>
public sealed record JobEntry(int Number, DateTimeOffset At, JobEvent What);
