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
    private readonly JobDesk _desk = new(store, clock, ids);

    public IReadOnlyList<JobHeader> List() => store.List();

    public JobState? Load(JobId job) => _desk.Load(job);

    public RecordOutcome Open(JobBrief brief) => _desk.Open(brief);

    public RecordOutcome Record(JobId job, JobEvent what) => _desk.Record(job, what);

    public void Export(JobId job, string path) => JobArchive.ExportTo(store, [job], Path.GetFullPath(path), force: false, outputs());

    public void Dispose() => store.Dispose();
}
