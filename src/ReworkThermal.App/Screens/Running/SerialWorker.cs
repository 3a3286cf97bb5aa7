using System.Collections.Concurrent;

namespace ReworkThermal.App.Screens.Running;

/// <summary>One thread that does things one after the other.</summary>
internal sealed class SerialWorker : IDisposable
{
    private readonly BlockingCollection<Action> _queue = [];
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

    /// <summary>Finishes what was handed in, then ends.</summary>
    public void Dispose()
    {
        _queue.CompleteAdding();
        _ = _thread.Join(TimeSpan.FromSeconds(5));
        _queue.Dispose();
    }

    private void Run()
    {
        foreach (Action work in _queue.GetConsumingEnumerable())
        {
            work();
        }
    }
}
