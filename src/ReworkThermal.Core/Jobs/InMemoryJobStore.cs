namespace ReworkThermal.Core.Jobs;

/// <summary>A job store that forgets everything with the process; the twin of the one on disk in tests and for trying things out.</summary>
public sealed class InMemoryJobStore : IJobStore
{
    private readonly Lock _gate = new();
    private readonly OrderedDictionary<JobId, List<JobEntry>> _jobs = [];

    /// <inheritdoc/>
    public IReadOnlyList<JobHeader> List()
    {
        lock (_gate)
        {
            return [.. _jobs.Select(j => Header(j.Key, j.Value))];
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<JobEntry> Read(JobId job, int after = 0)
    {
        ArgumentNullException.ThrowIfNull(job);
        lock (_gate)
        {
            return _jobs.TryGetValue(job, out List<JobEntry>? entries) ? [.. entries.Skip(after)] : [];
        }
    }

    /// <inheritdoc/>
    public AppendOutcome Append(JobId job, int after, DateTimeOffset at, JobEvent what)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(what);
        lock (_gate)
        {
            int last = Last(job);
            if (last != after)
            {
                return new AppendOutcome.Overtaken(last);
            }

            if (!_jobs.TryGetValue(job, out List<JobEntry>? entries))
            {
                _jobs.Add(job, entries = []);
            }

            JobEntry entry = new(last + 1, DateTimeOffset.FromUnixTimeMilliseconds(at.ToUnixTimeMilliseconds()), what);
            entries.Add(entry);
            return new AppendOutcome.Written(entry);
        }
    }

    /// <inheritdoc/>
    public BatchOutcome AppendAll(IReadOnlyList<JobLog> logs)
    {
        ArgumentNullException.ThrowIfNull(logs);
        lock (_gate)
        {
            foreach (JobLog log in logs)
            {
                if (log.Entries.Count > 0 && log.Entries[0].Number != Last(log.Id) + 1)
                {
                    return new BatchOutcome.Overtaken(log.Id);
                }
            }

            foreach (JobLog log in logs.Where(l => l.Entries.Count > 0))
            {
                if (!_jobs.TryGetValue(log.Id, out List<JobEntry>? entries))
                {
                    _jobs.Add(log.Id, entries = []);
                }

                entries.AddRange(log.Entries);
            }

            return new BatchOutcome.Written(logs.Sum(l => l.Entries.Count));
        }
    }

    /// <inheritdoc/>
    public void MustBeInPlace()
    {
    }

    /// <inheritdoc/>
    public void Dispose()
    {
    }

    private int Last(JobId job) => _jobs.TryGetValue(job, out List<JobEntry>? entries) ? entries.Count : 0;

    private static JobHeader Header(JobId id, List<JobEntry> entries)
    {
        JobState state = JobState.Replay(id, entries);
        return new JobHeader(id, state.Brief, state.Status, entries[0].At, entries[^1].At, entries[^1].Number);
    }
}
