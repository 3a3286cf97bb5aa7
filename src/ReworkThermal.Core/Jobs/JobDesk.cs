namespace ReworkThermal.Core.Jobs;

/// <summary>
/// Where jobs are opened, read and written: judges an event against the job as it stands in the store at that moment, and writes it.
/// When another process was quicker, it reads what was added and judges again.
/// </summary>
/// <param name="store">Where the jobs are.</param>
/// <param name="clock">Gives the time of recording.</param>
/// <param name="ids">Names new jobs.</param>
public sealed class JobDesk(IJobStore store, TimeProvider clock, IIdSource ids)
{
    private readonly Dictionary<JobId, List<JobEntry>> _seen = [];

    /// <summary>Opens a job.</summary>
    /// <param name="brief">What it is about.</param>
    /// <returns>Recorded with the new state, or refused.</returns>
    /// <exception cref="JobStoreException">The store cannot be written.</exception>
    public RecordOutcome Open(JobBrief brief)
    {
        while (true)
        {
            JobId id = ids.NewJob();
            if (Current(id).Count == 0)
            {
                return RecordIn(id, [new JobEvent.JobOpened(brief)]);
            }
        }
    }

    /// <summary>Reads a job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Its state, or null when there is no such job.</returns>
    /// <exception cref="JobStoreException">The store cannot be read.</exception>
    public JobState? Load(JobId job)
    {
        List<JobEntry> entries = Current(job);
        return entries.Count == 0 ? null : JobState.Replay(job, [.. entries]);
    }

    /// <summary>Finds jobs by identity, by the beginning of an identity, or by label.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>The one with exactly this identity, or all that fit.</returns>
    /// <exception cref="JobStoreException">The store cannot be read.</exception>
    public IReadOnlyList<JobHeader> Find(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        IReadOnlyList<JobHeader> all = store.List();
        List<JobHeader> exact = [.. all.Where(h => h.Id.Value == text)];
        List<JobHeader> labelled = [.. all.Where(h => string.Equals(h.Brief.Label, text, StringComparison.Ordinal))];
        return exact.Count > 0 ? exact
            : labelled.Count > 0 ? labelled
            : [.. all.Where(h => text.Length > 0 && h.Id.Value.StartsWith(text, StringComparison.Ordinal))];
    }

    /// <summary>Records an event.</summary>
    /// <param name="job">The job.</param>
    /// <param name="what">What happened.</param>
    /// <returns>Recorded with the new state, or refused, or no such job.</returns>
    /// <exception cref="JobStoreException">The store cannot be written.</exception>
    public RecordOutcome Record(JobId job, JobEvent what) => RecordAll(job, [what]);

    /// <summary>Records events that belong together: all of them or none.</summary>
    /// <param name="job">The job.</param>
    /// <param name="events">What happened, in order, at least one.</param>
    /// <returns>Recorded with the last entry and the new state, or refused for the first event that does not fit, or no such job.</returns>
    /// <exception cref="JobStoreException">The store cannot be written; nothing was changed.</exception>
    public RecordOutcome RecordAll(JobId job, IReadOnlyList<JobEvent> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        ArgumentOutOfRangeException.ThrowIfZero(events.Count);
        return Current(job).Count == 0 ? new RecordOutcome.NoSuchJob() : RecordIn(job, events);
    }

    private RecordOutcome RecordIn(JobId job, IReadOnlyList<JobEvent> events)
    {
        while (true)
        {
            List<JobEntry> entries = Current(job);
            DateTimeOffset at = DateTimeOffset.FromUnixTimeMilliseconds(clock.GetUtcNow().ToUnixTimeMilliseconds());
            List<JobEntry> added = [.. events.Select((what, i) => new JobEntry(entries.Count + 1 + i, at, what))];
            if (JobRules.JudgeNext(entries, added) is EventVerdict.Refused refused)
            {
                return new RecordOutcome.Refused(refused.Reason);
            }

            if (IsWritten(job, added))
            {
                entries.AddRange(added);
                return new RecordOutcome.Recorded(added[^1], JobState.Replay(job, [.. entries]));
            }
        }
    }

    private bool IsWritten(JobId job, List<JobEntry> added) => added is [JobEntry one]
        ? store.Append(job, one.Number - 1, one.At, one.What) is AppendOutcome.Written
        : store.AppendAll([new JobLog(job, added)]) is BatchOutcome.Written;

    private List<JobEntry> Current(JobId job)
    {
        if (!_seen.TryGetValue(job, out List<JobEntry>? entries))
        {
            _seen[job] = entries = [];
        }

        entries.AddRange(store.Read(job, entries.Count));
        return entries;
    }
}
