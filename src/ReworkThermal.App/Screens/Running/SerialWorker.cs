using System.Collections.Concurrent;

namespace ReworkThermal.App.Screens.Running;

/// <summary>One thread that does things one after the other.</summary>
internal sealed class SerialWorker : IDisposable
{
    // A store on a hanging disk must not keep the program for ever.
    private static readonly TimeSpan _patience = TimeSpan.FromSeconds(10);

    // Not disposed: its thread may still be waiting on it, and it holds nothing but memory.
#pragma warning disable CA2213
    private readonly BlockingCollection<Action> _queue = [];
#pragma warning restore CA2213
    private readonly Thread _thread;

    internal SerialWorker(string name)
    {
        _thread = new Thread(Run) { IsBackground = true, Name = name };
        _thread.Start();
    }

    internal void Do(Action work)
    {
        if (!_queue.IsAddingCompleted)
        {
            _queue.Add(work);
        }
    }

    /// <summary>Takes nothing more; what was handed in is done, unless the process ends before.</summary>
    public void Dispose() => _queue.CompleteAdding();

    /// <summary>Takes nothing more and waits until what was handed in is done, within bounds.</summary>
    internal void Finish()
    {
        Dispose();
        _ = _thread.Join(_patience);
    }

    private void Run()
    {
        foreach (Action work in _queue.GetConsumingEnumerable())
        {
            work();
        }
    }
}
