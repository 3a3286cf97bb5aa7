using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Running;

/// <summary>The one thread that touches the job store.</summary>
internal sealed class StoreClerk : IDisposable
{
    private static readonly TimeSpan _watchEvery = TimeSpan.FromSeconds(2);

    // Jobs with recent work are looked through for an interrupted touch at the beginning.
    private const int JobsLookedThrough = 20;

    private readonly SerialWorker _worker = new("job store");
    private readonly Func<IJobBook> _open;
    private readonly Action<Message> _post;
    private readonly Timer _watch;
    private IJobBook? _book;
    private bool _told;

    /// <summary>Makes a clerk; the store is opened with the first errand.</summary>
    /// <param name="open">Opens the store, on the clerk's thread.</param>
    /// <param name="post">Where answers go.</param>
    internal StoreClerk(Func<IJobBook> open, Action<Message> post)
    {
        _open = open;
        _post = post;
        _watch = new Timer(_ => _worker.Do(Watch), null, _watchEvery, _watchEvery);
    }

    internal void Take(Errand errand) => _worker.Do(() =>
    {
        RecordedFor? purpose = errand is Errand.Record record ? record.Purpose : errand is Errand.OpenJob ? RecordedFor.Entry : null;
        try
        {
            _book ??= _open();
            Do(_book, errand);
        }
        catch (JobStoreException trouble)
        {
            _post(new Message.StoreFailed(trouble.Message, purpose));
        }
#pragma warning disable CA1031 // Whatever goes wrong here must be seen: the technician relies on "all saved".
        catch (Exception fault)
#pragma warning restore CA1031
        {
            _post(new Message.StoreFailed(ScreenWords.Fault(fault.Message), purpose));
        }
    });

    public void Dispose()
    {
        using (ManualResetEvent quiet = new(initialState: false))
        {
            if (_watch.Dispose(quiet))
            {
                _ = quiet.WaitOne();
            }
        }

        _watch.Dispose();

        _worker.Finish();
        _book?.Dispose();
    }

    private void Do(IJobBook book, Errand errand)
    {
        switch (errand)
        {
            case Errand.ListJobs:
                IReadOnlyList<JobHeader> jobs = book.List();
                _post(new Message.JobsListed(jobs, Interrupted(book, jobs)));
                break;
            case Errand.LoadJob load:
                _post(book.Load(load.Job) is { } job ? new Message.JobLoaded(job) : new Message.Recorded(new RecordOutcome.NoSuchJob(), RecordedFor.ItsOwnSake));
                break;
            case Errand.OpenJob opening:
                _post(new Message.Recorded(book.Open(opening.Brief), RecordedFor.Entry));
                break;
            case Errand.Record record:
                _post(new Message.Recorded(book.Record(record.Job, record.Events), record.Purpose));
                break;
            case Errand.Export export:
                book.Export(export.Job, export.Path);
                _post(new Message.Exported(export.Path));
                break;
            case Errand.WriteElsewhere elsewhere:
                book.MoveTo(elsewhere.Path);
                _told = false;
                _post(new Message.WrittenElsewhere(Path.GetFullPath(elsewhere.Path)));
                break;
            default:
                throw new InvalidOperationException($"not an errand for the store: {errand.GetType().Name}");
        }
    }

    // Without a key too: "all saved" must not stand on the screen while the store is gone.
    private void Watch()
    {
        try
        {
            _book?.MustBeInPlace();
            _told = false;
        }
        catch (JobStoreException trouble)
        {
            if (!_told)
            {
                _post(new Message.StoreFailed(trouble.Message, null));
            }

            _told = true;
        }
    }

    private static JobState? Interrupted(IJobBook book, IReadOnlyList<JobHeader> jobs) => jobs
        .Where(j => j.Status == JobStatus.Open)
        .OrderByDescending(j => j.LastAt)
        .Take(JobsLookedThrough)
        .Select(j => book.Load(j.Id))
        .FirstOrDefault(j => j?.OpenTouches.Count > 0);
}
