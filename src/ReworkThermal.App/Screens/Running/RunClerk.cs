using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using UnitsNet;

namespace ReworkThermal.App.Screens.Running;

/// <summary>The one thread on which a running touch is simulated. If it cannot keep up, times in between are skipped.</summary>
/// <param name="runs">The simulations; may wait until the data folders are read; null when they cannot be.</param>
/// <param name="post">Where readings go.</param>
internal sealed class RunClerk(Func<IBenchRuns?> runs, Action<Message> post) : IDisposable
{
    private readonly SerialWorker _worker = new("touch");
    private IBenchRun? _run;
    private int _turn;
    private Errand? _latest;

    internal void Take(Errand errand)
    {
        switch (errand)
        {
            case Errand.BeginRun begin:
                _worker.Do(() => Guarded(() => Begin(begin)));
                break;
            case Errand.ReleaseRun release:
                _worker.Do(() => Release(release));
                break;
            default:
                if (Interlocked.Exchange(ref _latest, errand) is null)
                {
                    _worker.Do(() => Guarded(Follow));
                }

                break;
        }
    }

    public void Dispose() => _worker.Dispose();

    /// <summary>Waits until nothing runs any more, within bounds.</summary>
    internal void Finish() => _worker.Finish();

    private void Begin(Errand.BeginRun begin)
    {
        _turn = begin.Turn;
        _run = null;
        BenchStart start = runs()?.Begin(begin.Setup) ?? new BenchStart.ClockOnly(ScreenWords.NoShelf);
        _run = (start as BenchStart.Ready)?.Run;
        post(new Message.RunBegun(begin.Turn, (start as BenchStart.Ready)?.Forecast, (start as BenchStart.ClockOnly)?.Reason));
    }

    private void Follow()
    {
        switch (Interlocked.Exchange(ref _latest, null))
        {
            case Errand.AdvanceRun advance when advance.Turn == _turn && _run is { } run:
                post(new Message.RunRead(_turn, run.Advance(Duration.FromSeconds(advance.Elapsed.TotalSeconds))));
                break;
            case Errand.CoolRun cool when cool.Turn == _turn && _run is { } run:
                post(new Message.RunRead(_turn, run.Cool(Duration.FromSeconds(cool.SinceRelease.TotalSeconds))));
                break;
            default:
                break;
        }
    }

    /// <summary>The touch goes into the record in any case, with temperatures or without.</summary>
    private void Release(Errand.ReleaseRun release)
    {
        BenchRelease? known = null;
        Guarded(() => known = release.Turn == _turn ? _run?.Release(Duration.FromSeconds(release.Elapsed.TotalSeconds)) : null);
        post(new Message.RunReleased(release.Turn, known));
        if (release.Turn == _turn && _run is { } run)
        {
            Guarded(() => post(new Message.CoolingKnown(release.Turn, run.Wait())));
        }
    }

    private void Guarded(Action work)
    {
        try
        {
            work();
        }
#pragma warning disable CA1031 // A fault of the simulation must not stop the clock or lose the touch.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            _run = null;
            post(new Message.Faulted(ScreenWords.Fault(fault.Message)));
        }
    }
}
