using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>The job store as the screens see it. Called from one background thread only, one call after the other.</summary>
internal interface IJobBook : IDisposable
{
    /// <summary>All jobs.</summary>
    /// <exception cref="JobStoreException">The store cannot be read.</exception>
    public IReadOnlyList<JobHeader> List();

    /// <summary>One job, or null when there is none such.</summary>
    /// <exception cref="JobStoreException">The store cannot be read.</exception>
    public JobState? Load(JobId job);

    /// <summary>Opens a job.</summary>
    /// <exception cref="JobStoreException">The store cannot be written.</exception>
    public RecordOutcome Open(JobBrief brief);

    /// <summary>Records events, all or none.</summary>
    /// <exception cref="JobStoreException">The store cannot be written.</exception>
    public RecordOutcome Record(JobId job, IReadOnlyList<JobEvent> events);

    /// <summary>Looks whether what was saved is still where it was.</summary>
    /// <exception cref="JobStoreException">The store was moved, deleted or replaced.</exception>
    public void MustBeInPlace();

    /// <summary>Writes all jobs to a new store and goes on there.</summary>
    /// <exception cref="JobStoreException">It cannot be written; the book stays where it is.</exception>
    public void MoveTo(string path);

    /// <summary>Writes a job's record to a file that must not exist yet.</summary>
    /// <exception cref="JobStoreException">The file cannot be written.</exception>
    public void Export(JobId job, string path);
}
