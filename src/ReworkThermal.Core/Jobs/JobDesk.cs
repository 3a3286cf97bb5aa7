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
                return RecordIn(id, new JobEvent.JobOpened(brief));
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
    public RecordOutcome Record(JobId job, JobEvent what) =>
        Current(job).Count == 0 ? new RecordOutcome.NoSuchJob() : RecordIn(job, what);

    private RecordOutcome RecordIn(JobId job, JobEvent what)
    {
        while (true)
        {
            List<JobEntry> entries = Current(job);
            JobState? state = entries.Count == 0 ? null : JobState.Replay(job, [.. entries]);
            if (JobRules.Judge(state, what) is EventVerdict.Refused refused)
            {
                return new RecordOutcome.Refused(refused.Reason);
            }

            if (store.Append(job, entries.Count, clock.GetUtcNow(), what) is AppendOutcome.Written written)
            {
                entries.Add(written.Entry);
                return new RecordOutcome.Recorded(written.Entry, JobState.Replay(job, [.. entries]));
            }
        }
    }

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
