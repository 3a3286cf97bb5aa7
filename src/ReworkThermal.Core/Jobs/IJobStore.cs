namespace ReworkThermal.Core.Jobs;

/// <summary>
/// Keeps jobs. Entries are only ever added. What <see cref="Append"/> has answered with
/// <see cref="AppendOutcome.Written"/> is safe against loss of power and of the process. Several stores, also in several processes,
/// may have the same jobs open. One object serves one thread at a time.
/// </summary>
public interface IJobStore : IDisposable
{
    /// <summary>All jobs in the order they were opened here.</summary>
    /// <returns>One header per job.</returns>
    /// <exception cref="JobStoreException">The store cannot be read.</exception>
    public IReadOnlyList<JobHeader> List();

    /// <summary>Entries of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="after">Number of the last entry that is already known; 0 for all.</param>
    /// <returns>Entries with higher numbers in order; empty when there are none or there is no such job.</returns>
    /// <exception cref="JobStoreException">The store cannot be read.</exception>
    public IReadOnlyList<JobEntry> Read(JobId job, int after = 0);

    /// <summary>Adds one entry, unless somebody else was quicker.</summary>
    /// <param name="job">The job; it comes into being with its first entry.</param>
    /// <param name="after">Number of the last entry the caller has seen; 0 when there must be none.</param>
    /// <param name="at">Time of recording; kept in UTC to the millisecond.</param>
    /// <param name="what">The event, already judged by <see cref="JobRules"/>.</param>
    /// <returns>The written entry, or the number of the last entry when others were added meanwhile.</returns>
    /// <exception cref="JobStoreException">The entry could not be written; nothing was changed.</exception>
    public AppendOutcome Append(JobId job, int after, DateTimeOffset at, JobEvent what);

    /// <summary>Adds entries of many jobs, all or none.</summary>
    /// <param name="logs">Per job the entries to add, numbered on from the last one the caller has seen; already judged.</param>
    /// <returns>Written, or the job in which others were quicker.</returns>
    /// <exception cref="JobStoreException">The entries could not be written; nothing was changed.</exception>
    public BatchOutcome AppendAll(IReadOnlyList<JobLog> logs);

    /// <summary>Looks whether what was written is still where it was said to be.</summary>
    /// <exception cref="JobStoreException">It was moved away, deleted or replaced meanwhile.</exception>
    public void MustBeInPlace();
}
