using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>A job store whose disk is full whenever a test says so.</summary>
internal sealed class FailingStore : IJobStore
{
    private readonly InMemoryJobStore _inner = new();

    internal bool Fails { get; set; }

    public IReadOnlyList<JobHeader> List() => _inner.List();

    public IReadOnlyList<JobEntry> Read(JobId job, int after = 0) => _inner.Read(job, after);

    public AppendOutcome Append(JobId job, int after, DateTimeOffset at, JobEvent what) =>
        Fails ? throw new JobStoreException(StoreTrouble.DiskFull, "the disk is full") : _inner.Append(job, after, at, what);

    public BatchOutcome AppendAll(IReadOnlyList<JobLog> logs) =>
        Fails ? throw new JobStoreException(StoreTrouble.DiskFull, "the disk is full") : _inner.AppendAll(logs);

    public void MustBeInPlace() => _inner.MustBeInPlace();

    public void Dispose() => _inner.Dispose();
}
