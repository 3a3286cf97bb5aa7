using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Running;

/// <summary>The one thread that touches the job store.</summary>
/// <param name="open">Opens the store, on that thread.</param>
/// <param name="post">Where answers go.</param>
internal sealed class StoreClerk(Func<IJobBook> open, Action<Message> post) : IDisposable
{
    // Jobs with recent work are looked through for an interrupted touch at the beginning.
    private const int JobsLookedThrough = 20;

    private readonly SerialWorker _worker = new("job store");
    private IJobBook? _book;

    internal void Take(Errand errand) => _worker.Do(() =>
    {
        RecordedFor? purpose = errand is Errand.Record record ? record.Purpose : errand is Errand.OpenJob ? RecordedFor.Entry : null;
        try
        {
            _book ??= open();
            Do(_book, errand);
        }
        catch (JobStoreException trouble)
        {
            post(new Message.StoreFailed(trouble.Message, purpose));
        }
#pragma warning disable CA1031 // Whatever goes wrong here must be seen: the technician relies on "all saved".
        catch (Exception fault)
#pragma warning restore CA1031
        {
            post(new Message.StoreFailed(ScreenWords.Fault(fault.Message), purpose));
        }
    });

    public void Dispose()
    {
        _worker.Finish();
        _book?.Dispose();
    }

    private void Do(IJobBook book, Errand errand)
    {
        switch (errand)
        {
            case Errand.ListJobs:
                IReadOnlyList<JobHeader> jobs = book.List();
                post(new Message.JobsListed(jobs, Interrupted(book, jobs)));
                break;
            case Errand.LoadJob load:
                post(book.Load(load.Job) is { } job ? new Message.JobLoaded(job) : new Message.Recorded(new RecordOutcome.NoSuchJob(), RecordedFor.ItsOwnSake));
                break;
            case Errand.OpenJob opening:
                post(new Message.Recorded(book.Open(opening.Brief), RecordedFor.Entry));
                break;
            case Errand.Record record:
                post(new Message.Recorded(RecordAll(book, record), record.Purpose));
                break;
            case Errand.Export export:
                book.Export(export.Job, export.Path);
                post(new Message.Exported(export.Path));
                break;
            default:
                throw new InvalidOperationException($"not an errand for the store: {errand.GetType().Name}");
        }
    }

    private static RecordOutcome RecordAll(IJobBook book, Errand.Record record)
    {
        RecordOutcome outcome = new RecordOutcome.NoSuchJob();
        foreach (JobEvent what in record.Events)
        {
            outcome = book.Record(record.Job, what);
            if (outcome is not RecordOutcome.Recorded)
            {
                break;
            }
        }

        return outcome;
    }

    private static JobState? Interrupted(IJobBook book, IReadOnlyList<JobHeader> jobs) => jobs
        .Where(j => j.Status == JobStatus.Open)
        .OrderByDescending(j => j.LastAt)
        .Take(JobsLookedThrough)
        .Select(j => book.Load(j.Id))
        .FirstOrDefault(j => j?.OpenTouches.Count > 0);
}
