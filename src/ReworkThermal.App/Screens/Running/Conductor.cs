using System.Collections.Concurrent;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;

namespace ReworkThermal.App.Screens.Running;

/// <summary>
/// Holds the state, applies messages one after the other on the thread of the screens, and hands errands to workers whose answers
/// come back as messages. Nothing here waits.
/// </summary>
internal sealed class Conductor : IDisposable
{
    private readonly ConcurrentQueue<Message> _mail = new();
    private readonly Action<Action> _onScreenThread;
    private readonly TimeProvider _time;
    private readonly long _began;
    private readonly Workers _workers;
    private int _collecting;
    private bool _ended;

    /// <summary>Makes a conductor; nothing happens before <see cref="Begin"/>.</summary>
    /// <param name="time">The clocks.</param>
    /// <param name="desks">What works behind the screens.</param>
    /// <param name="onScreenThread">Runs something on the thread of the screens, soon.</param>
    /// <param name="signals">Bell and leaving.</param>
    internal Conductor(TimeProvider time, BenchDesks desks, Action<Action> onScreenThread, ScreenSignals signals)
    {
        _time = time;
        _began = time.GetTimestamp();
        _onScreenThread = onScreenThread;
        _workers = new Workers(desks, signals, Post);
        State = new BenchState { Now = Now };
    }

    /// <summary>The state now.</summary>
    internal BenchState State { get; private set; }

    /// <summary>Called after the state changed.</summary>
    internal Action? Changed { get; set; }

    /// <summary>The moment now.</summary>
    internal Moment Now => new(_time.GetElapsedTime(_began), _time.GetUtcNow());

    /// <summary>Begins: reads jobs and data folders. Keys that came before are kept: the screen is seen a moment earlier.</summary>
    internal void Begin()
    {
        _workers.Start();
        Take(BenchUpdate.Begin(State, Now));
    }

    /// <summary>Applies a message; on the thread of the screens only.</summary>
    internal void Send(Message message) => Take(BenchUpdate.Apply(State, message));

    /// <inheritdoc/>
    public void Dispose()
    {
        Volatile.Write(ref _ended, true);
        _workers.Dispose();
    }

    /// <summary>As <see cref="Dispose"/>, takes the last answers of the store, and keeps what is still being typed.</summary>
    /// <returns>Null, or a sentence with the text that could not be kept.</returns>
    internal string? Close()
    {
        Dispose();
        Changed = null;
        Collect();
        return KeepDraft();
    }

    /// <summary>Keeps what is being typed as a draft for the next start; from any thread.</summary>
    /// <returns>Null, or a sentence with the text that could not be kept.</returns>
    internal string? KeepDraft()
    {
        BenchState state = State;
        return _workers.KeepDraft(state.Drafts.Left, DraftField.Of(state));
    }

    /// <summary>As <see cref="Dispose"/>, and waits for every thread behind the screens.</summary>
    internal void Finish()
    {
        Volatile.Write(ref _ended, true);
        _workers.Finish();
    }

    /// <summary>Hands in a message from any thread. Many in a row are collected in one go.</summary>
    private void Post(Message message)
    {
        _mail.Enqueue(message);
        if (!Volatile.Read(ref _ended) && Interlocked.Exchange(ref _collecting, 1) == 0)
        {
            _onScreenThread(Collect);
        }
    }

    private void Collect()
    {
        Volatile.Write(ref _collecting, 0);
        while (_mail.TryDequeue(out Message? message))
        {
            Send(message);
        }
    }

    private void Take(Step step)
    {
        State = step.State;
        foreach (Errand errand in step.Errands)
        {
            _workers.Take(errand);
        }

        Changed?.Invoke();
    }
}
