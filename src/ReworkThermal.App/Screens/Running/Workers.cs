using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Data;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Running;

/// <summary>Threads behind the screens: one for the store, one each for budgets, mixes, plans, the running touch, lessons, drafts and the record to hand over.</summary>
internal sealed class Workers : IDisposable
{
    private readonly BenchDesks _desks;
    private readonly ScreenSignals _signals;
    private readonly Action<Message> _post;
    private readonly TaskCompletionSource<Workbench?> _bench = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly StoreClerk _store;
    private readonly RunClerk _runs;
    private readonly LatestWorker<Errand.ReckonBudgets> _budgets;
    private readonly LatestWorker<Errand.ReckonMix> _mixes;
    private readonly SerialWorker _plans;
    private readonly SerialWorker _lessons;
    private readonly SerialWorker _records;
    private readonly SerialWorker _reader;
    private readonly SerialWorker _drafts;

    // Not disposed: work that is being broken off may still look at them, and they hold nothing but memory.
#pragma warning disable CA2213
    private readonly CancellationTokenSource _end = new();
    private CancellationTokenSource _plan = new();
#pragma warning restore CA2213
    private volatile IReadOnlyList<Draft>? _kept;
    private bool _disposed;

    internal Workers(BenchDesks desks, ScreenSignals signals, Action<Message> post)
    {
        _desks = desks;
        _signals = signals;
        _post = post;
        _store = new StoreClerk(desks.OpenBook, post);
        _runs = new RunClerk(() => _bench.Task.GetAwaiter().GetResult()?.Runs, post);
        _budgets = new LatestWorker<Errand.ReckonBudgets>("budgets", Budgets);
        _mixes = new LatestWorker<Errand.ReckonMix>("mix", Mix);
        _plans = new SerialWorker("plan");
        _lessons = new SerialWorker("lessons");
        _records = new SerialWorker("record");
        _reader = new SerialWorker("data folders");
        _drafts = new SerialWorker("drafts");
    }

    /// <summary>Begins to read the data folders.</summary>
    internal void Start() => _reader.Do(ReadShelf);

    /// <summary>Takes an errand; returns at once.</summary>
    internal void Take(Errand errand)
    {
        switch (errand)
        {
            case Errand.ListJobs or Errand.LoadJob or Errand.OpenJob or Errand.Record or Errand.Export or Errand.WriteElsewhere:
                _store.Take(errand);
                break;
            case Errand.BeginRun or Errand.AdvanceRun or Errand.ReleaseRun or Errand.CoolRun:
                _runs.Take(errand);
                break;
            case Errand.ReckonBudgets budgets:
                _budgets.Ask(budgets);
                break;
            case Errand.ReckonMix mix:
                _mixes.Ask(mix);
                break;
            case Errand.RunPlan plan:
                _plan = new CancellationTokenSource();
                CancellationToken cancellation = _plan.Token;
                _plans.Do(() => Plan(plan, cancellation));
                break;
            case Errand.Learn or Errand.Unlearn:
                _lessons.Do(() => Guarded(() => Teach(errand)));
                break;
            case Errand.WriteRecord write:
                _records.Do(() => Guarded(() => Write(write)));
                break;
            case Errand.ReadDrafts:
                _drafts.Do(() => Guarded(ReadDrafts));
                break;
            case Errand.KeepDrafts keep:
                _drafts.Do(() => Guarded(() => Keep(keep.Drafts)));
                break;
            case Errand.CancelPlan:
                _plan.Cancel();
                break;
            case Errand.Ring ring:
                _signals.Ring(ring.Times);
                break;
            case Errand.Leave:
                _signals.Leave();
                break;
            default:
                throw new InvalidOperationException($"nobody takes {errand.GetType().Name}");
        }
    }

    /// <summary>Finishes what the store was given; everything else is broken off.</summary>
    public void Dispose()
    {
        if (_disposed)
        {
            return;
        }

        _disposed = true;
        _ = _bench.TrySetResult(null);
        _plan.Cancel();
        _end.Cancel();
        _store.Dispose();
        _runs.Dispose();
        _budgets.Dispose();
        _mixes.Dispose();
        _plans.Dispose();
        _lessons.Dispose();
        _records.Dispose();
        _reader.Dispose();
        _drafts.Finish();
    }

    /// <summary>As <see cref="Dispose"/>, and waits for every thread.</summary>
    internal void Finish()
    {
        Dispose();
        _runs.Finish();
        _budgets.Finish();
        _mixes.Finish();
        _plans.Finish();
        _lessons.Finish();
        _records.Finish();
        _reader.Finish();
    }

    /// <summary>Keeps drafts at once, on the thread of the caller: the program is ending.</summary>
    /// <param name="left">Drafts not answered yet; null when they were not read, and stay as they are.</param>
    /// <param name="typed">What is being typed, or null.</param>
    /// <returns>Null, or a sentence with the text that could not be kept.</returns>
    internal string? KeepDraft(IReadOnlyList<Draft>? left, Draft? typed)
    {
        if (typed is null && left is null)
        {
            return null;
        }

        try
        {
            IReadOnlyList<Draft> all = typed is null ? left! : [.. (left ?? _desks.Drafts?.Read() ?? []).Append(typed).Distinct()];
            if (!all.SequenceEqual(_kept ?? []))
            {
                Keep(all);
            }

            return null;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or DataFileException)
        {
            return typed is null ? null : ScreenWords.DraftNotKept(_desks.Drafts!.Path, trouble.Message, typed.Label, typed.Text);
        }
    }

    private Workbench? Bench() => _bench.Task.GetAwaiter().GetResult();

    private void ReadShelf()
    {
        Workbench? bench = null;
        Guarded(() =>
        {
            try
            {
                bench = _desks.OpenWorkbench();
                _post(new Message.ShelfRead(bench.Names));
            }
            catch (DataFileException broken)
            {
                _post(new Message.ShelfBroken(ScreenWords.ShelfBroken(broken.Problems.Count > 0 ? broken.Problems[0].ToString() : broken.Message)));
            }
        });
        _ = _bench.TrySetResult(bench);
    }

    private void Keep(IReadOnlyList<Draft> drafts)
    {
        _desks.Drafts?.Keep(drafts);
        _kept = drafts;
    }

    private void ReadDrafts()
    {
        IReadOnlyList<Draft> drafts = [];
        string? complaint = null;
        try
        {
            drafts = _desks.Drafts?.Read() ?? [];
        }
        catch (DataFileException broken)
        {
            complaint = Sentence.Capital(broken.Message);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            complaint = ScreenWords.DraftNotRead(_desks.Drafts!.Path, trouble.Message);
        }

        _kept = drafts;
        _post(new Message.DraftsRead(drafts, complaint));
    }

    private void Budgets(Errand.ReckonBudgets errand, CancellationToken cancellation) => Guarded(() =>
    {
        if (Bench() is { } bench)
        {
            _post(new Message.BudgetsReckoned(errand.Job.Id, bench.Budgets.Reckon(errand.Job, cancellation)));
        }
    });

    private void Mix(Errand.ReckonMix errand, CancellationToken cancellation) => Guarded(() =>
    {
        if (Bench() is { } bench)
        {
            _post(new Message.MixReckoned(errand.Turn, bench.Mix.Reckon(errand.Question, cancellation)));
        }
    });

    private void Plan(Errand.RunPlan errand, CancellationToken cancellation)
    {
        PlanAnswer? answer = null;
        Guarded(() => answer = Bench() is { } bench
            ? bench.Plan.Plan(
                errand.Form,
                errand.Job,
                progress => _post(new Message.PlanMoved(errand.Turn, progress)),
                ranked => _post(new Message.PlanRanked(errand.Turn, ranked)),
                cancellation)
            : new PlanAnswer.NotAvailable(ScreenWords.NoShelf));
        _post(new Message.PlanEnded(errand.Turn, answer));
    }

    private void Teach(Errand errand)
    {
        LessonAnswer? answer = (Bench(), errand) switch
        {
            ({ } bench, Errand.Learn learn) => bench.Lessons.Learn(learn.Job, learn.Number, learn.Measurement, learn.Lesson, _end.Token),
            ({ } bench, Errand.Unlearn unlearn) => bench.Lessons.Forget(unlearn.Job, unlearn.Number, unlearn.Bench, _end.Token),
            _ => null,
        };
        if (answer is not null)
        {
            _post(new Message.Taught(answer));
        }
    }

    private void Write(Errand.WriteRecord errand) => _post(new Message.RecordMade(
        Bench() is { } bench ? bench.Records.Write(errand.Job, errand.Replace) : new RecordAnswer.Failed(ScreenWords.NoShelf)));

    /// <summary>A fault behind the screens is shown and does not end the program: a touch may be running.</summary>
    private void Guarded(Action work)
    {
        try
        {
            work();
        }
        catch (OperationCanceledException)
        {
            // Overtaken or broken off: nobody waits for the answer.
        }
#pragma warning disable CA1031 // See the summary.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            _post(new Message.Faulted(ScreenWords.Fault(fault.Message)));
        }
    }
}
