namespace ReworkThermal.App.Screens.Running;

/// <summary>Works on the latest of a row of questions; what is overtaken is cancelled or never begun.</summary>
/// <typeparam name="T">The question.</typeparam>
internal sealed class LatestWorker<T> : IDisposable
    where T : class
{
    private readonly SerialWorker _worker;
    private readonly Action<T, CancellationToken> _work;
    private readonly Lock _lock = new();
    private T? _waiting;

    // Disposed by its own run: work that is being broken off may still look at it.
#pragma warning disable CA2213
    private CancellationTokenSource? _running;
#pragma warning restore CA2213

    internal LatestWorker(string name, Action<T, CancellationToken> work)
    {
        _work = work;
        _worker = new SerialWorker(name);
    }

    internal void Ask(T question)
    {
        lock (_lock)
        {
            bool pending = _waiting is not null;
            _waiting = question;
            _running?.Cancel();
            if (!pending)
            {
                _worker.Do(Run);
            }
        }
    }

    public void Dispose()
    {
        lock (_lock)
        {
            _waiting = null;
            _running?.Cancel();
        }

        _worker.Dispose();
    }

    /// <summary>Breaks off and waits until nothing runs any more, within bounds.</summary>
    internal void Finish()
    {
        Dispose();
        _worker.Finish();
    }

    private void Run()
    {
        T? question;
        CancellationTokenSource own = new();
        lock (_lock)
        {
            question = _waiting;
            _waiting = null;
            _running = own;
        }

        try
        {
            if (question is not null)
            {
                _work(question, own.Token);
            }
        }
        finally
        {
            lock (_lock)
            {
                _running = null;
            }

            own.Dispose();
        }
    }
}
