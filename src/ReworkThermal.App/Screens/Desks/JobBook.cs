using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>A job store as the screens use it.</summary>
/// <param name="store">Where the jobs are; disposed with the book.</param>
/// <param name="clock">Gives the time of recording.</param>
/// <param name="ids">Names new jobs.</param>
/// <param name="outputs">Gives the way to write files.</param>
internal sealed class JobBook(IJobStore store, TimeProvider clock, IIdSource ids, Func<OutputFiles> outputs) : IJobBook
{
    private IJobStore _store = store;
    private JobDesk _desk = new(store, clock, ids);

    public IReadOnlyList<JobHeader> List() => _store.List();

    public JobState? Load(JobId job) => _desk.Load(job);

    public RecordOutcome Open(JobBrief brief) => _desk.Open(brief);

    public RecordOutcome Record(JobId job, IReadOnlyList<JobEvent> events) => _desk.RecordAll(job, events);

    public void MustBeInPlace() => _store.MustBeInPlace();

    public void Export(JobId job, string path) => JobArchive.ExportTo(_store, [job], Path.GetFullPath(path), force: false, outputs());

    public void MoveTo(string path)
    {
        IJobStore old = _store;
        _store = SqliteJobStore.NewFrom(old, path);
        _desk = new JobDesk(_store, clock, ids);
        old.Dispose();
    }

    public void Dispose() => _store.Dispose();
}
