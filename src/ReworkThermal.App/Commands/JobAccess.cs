using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Commands;

/// <summary>An open job store with the desk at which jobs are read and written.</summary>
internal sealed class JobAccess : IDisposable
{
    private JobAccess(SqliteJobStore store, Shell shell)
    {
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

    /// <summary>Records events of one command: all of them or none.</summary>
    /// <param name="picked">The job.</param>
    /// <param name="events">What happened, in order, at least one.</param>
    /// <returns>The reply of the command.</returns>
    internal Reply RecordAll(JobPick.Picked picked, IReadOnlyList<JobEvent> events) => Desk.RecordAll(picked.State.Id, events) switch
    {
        RecordOutcome.Recorded { State: { } state } => new Reply.Answered(new RecordedView([.. state.Entries.TakeLast(events.Count)], state, picked.Notes)),
        RecordOutcome.Refused refused => new Reply.Misused(JobWords.NotRecorded(refused.Reason)),
        RecordOutcome.NoSuchJob => new Reply.Misused(JobWords.NoSuchJob(picked.State.Id.Value)),
        _ => throw new InvalidOperationException("unknown kind of record outcome"),
    };

    /// <summary>Closes the store.</summary>
    public void Dispose() => Store.Dispose();
}
