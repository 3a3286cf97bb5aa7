using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>A job store that writes nothing until a test lets it.</summary>
internal sealed class GatedStore : IJobStore
{
    private readonly InMemoryJobStore _inner = new();

    internal ManualResetEventSlim Gate { get; } = new(initialState: true);

    public IReadOnlyList<JobHeader> List() => _inner.List();

    public IReadOnlyList<JobEntry> Read(JobId job, int after = 0) => _inner.Read(job, after);

    public AppendOutcome Append(JobId job, int after, DateTimeOffset at, JobEvent what)
    {
        Gate.Wait();
        return _inner.Append(job, after, at, what);
    }

    public BatchOutcome AppendAll(IReadOnlyList<JobLog> logs)
    {
        Gate.Wait();
        return _inner.AppendAll(logs);
    }

    public void MustBeInPlace() => _inner.MustBeInPlace();

    public void Dispose()
    {
        _inner.Dispose();
        Gate.Dispose();
    }
}
