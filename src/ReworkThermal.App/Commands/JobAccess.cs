using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Commands;

/// <summary>An open job store with the desk at which jobs are read and written.</summary>
internal sealed class JobAccess : IDisposable
{
    private readonly TimeProvider _clock;

    private JobAccess(SqliteJobStore store, Shell shell)
    {
        _clock = shell.Clock;
        Store = store;
        Desk = new JobDesk(store, shell.Clock, shell.Ids);
    }

    /// <summary>The store.</summary>
    internal SqliteJobStore Store { get; }

    /// <summary>The desk.</summary>
    internal JobDesk Desk { get; }

    /// <summary>Opens a store.</summary>
    /// <param name="shell">Clock and identities.</param>
    /// <param name="path">Path of the file; null for the default place.</param>
    /// <param name="mayCreate">Whether the file may be made when it is not there.</param>
    /// <returns>The open store.</returns>
    /// <exception cref="JobStoreException">The store cannot be used.</exception>
    internal static JobAccess Open(Shell shell, string? path, bool mayCreate)
    {
        string file = path ?? StorePlace.Default();
        return new JobAccess(mayCreate ? SqliteJobStore.Open(file) : SqliteJobStore.OpenExisting(file), shell);
    }

    /// <summary>Chooses a job.</summary>
    /// <param name="text">Identity, its beginning, or label; null for the only open job.</param>
    /// <returns>The job, or why there is none.</returns>
    internal JobPick Pick(string? text)
    {
        IReadOnlyList<JobHeader> fitting = text is null
            ? [.. Store.List().Where(h => h.Status == JobStatus.Open)]
            : Desk.Find(text);
        return fitting switch
        {
            [JobHeader one] => new JobPick.Picked(Desk.Load(one.Id)!, text is null ? [JobWords.OnlyOpenJob(one)] : []),
            [] => new JobPick.Refused(text is null ? JobWords.NoOpenJob : JobWords.NoSuchJob(text)),
            _ => new JobPick.Refused(JobWords.WhichJob(text, fitting)),
        };
    }

    /// <summary>Records an event.</summary>
    /// <param name="picked">The job.</param>
    /// <param name="what">What happened.</param>
    /// <returns>The reply of the command.</returns>
    internal Reply Record(JobPick.Picked picked, JobEvent what) => RecordAll(picked, [what]);

    /// <summary>Records events of one command: all of them or, as far as can be judged beforehand, none.</summary>
    /// <param name="picked">The job.</param>
    /// <param name="events">What happened, in order, at least one.</param>
    /// <returns>The reply of the command.</returns>
    internal Reply RecordAll(JobPick.Picked picked, IReadOnlyList<JobEvent> events)
    {
        if (Objection(picked.State, events) is { } objection)
        {
            return new Reply.Misused(JobWords.NotRecorded(objection));
        }

        List<RecordOutcome.Recorded> recorded = [];
        foreach (JobEvent what in events)
        {
            switch (Desk.Record(picked.State.Id, what))
            {
                case RecordOutcome.Recorded done:
                    recorded.Add(done);
                    break;
                case RecordOutcome.Refused late:
                    // Another process was quicker, and what it wrote speaks against the rest.
                    return new Reply.Misused(recorded.Count > 0 ? JobWords.PartlyRecorded(recorded[^1].Entry.Number, late.Reason) : JobWords.NotRecorded(late.Reason));
                case RecordOutcome.NoSuchJob:
                    return new Reply.Misused(JobWords.NoSuchJob(picked.State.Id.Value));
                default:
                    throw new InvalidOperationException("unknown kind of record outcome");
            }
        }

        return new Reply.Answered(new RecordedView([.. recorded.Select(r => r.Entry)], recorded[^1].State, picked.Notes));
    }

    // Each event is judged against the job as the ones before it would leave it.
    private string? Objection(JobState state, IReadOnlyList<JobEvent> events)
    {
        foreach (JobEvent what in events)
        {
            if (JobRules.Judge(state, what) is EventVerdict.Refused refused)
            {
                return refused.Reason;
            }

            state = JobState.Replay(state.Id, [.. state.Entries, new JobEntry(state.LastNumber + 1, _clock.GetUtcNow(), what)]);
        }

        return null;
    }

    /// <summary>Closes the store.</summary>
    public void Dispose() => Store.Dispose();
}
