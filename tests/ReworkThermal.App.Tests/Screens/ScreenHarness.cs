using System.Diagnostics;
using System.Text;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Running;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;
using ReworkThermal.Data.Store;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>The real window on a terminal that exists in memory only: keys go in, text comes out.</summary>
internal sealed class ScreenHarness : IDisposable
{
    private readonly VirtualTimeProvider _toolkitTime = new();
    private readonly IApplication _app;
    private readonly Conductor _conductor;
    private readonly BenchWindow _window;
    private readonly SessionToken _session;

    internal ScreenHarness(int width = 80, int height = 24, IJobStore? store = null, bool real = false, ScreenOptions? options = null, DraftFile? drafts = null, params Key[] early)
    {
        Store = store ?? new InMemoryJobStore();
        Engines = new ScriptedBench();
        _app = Application.Create(_toolkitTime);
        _ = _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(width, height);
        BenchDesks desks = new(() => new JobBook(Store, Time, new CountedIds(), () => new OutputFiles([])), real ? () => RealDesks.Open(DataRoot.BesideProgram, Path.Combine(Folder.Path, "calibrations"), Folder.Path) : Engines.Open, drafts);
        _conductor = new Conductor(Time, desks, _app.Invoke, new ScreenSignals(times => Rings += times, () => Left = true));
        ScreenOptions wanted = options ?? new ScreenOptions(Plain: false, Light: false, Store: null);
        _window = new BenchWindow(_app, _conductor, Palette.Choose(wanted, _ => null), wanted.Plain);
        _session = _app.Begin(_window)!;
        _ = Keys(early);
        _conductor.Begin();
        Draw();
        _ = Until(() => State is { Shelf: not null, Jobs.Jobs: not null, Drafts.Left: not null });
    }

    internal IJobStore Store { get; }

    internal ScriptedBench Engines { get; }

    internal BenchTime Time { get; } = new();

    /// <summary>Calibrations and written records of the real engines.</summary>
    internal TemporaryFolder Folder { get; } = new();

    internal int Rings { get; private set; }

    internal bool Left { get; private set; }

    internal BenchState State => _conductor.State;

    /// <summary>The job as the store has it, not as the screen shows it.</summary>
    internal JobState Stored => JobState.Replay(State.Job!.Id, Store.Read(State.Job!.Id));

    /// <summary>The whole screen, one line per row.</summary>
    internal string Screen
    {
        get
        {
            Cell[,] cells = _app.Driver!.Contents!;
            StringBuilder text = new();
            for (int y = 0; y < cells.GetLength(0); y++)
            {
                StringBuilder row = new();
                for (int x = 0; x < cells.GetLength(1); x++)
                {
                    string grapheme = cells[y, x].Grapheme;
                    row.Append(string.IsNullOrEmpty(grapheme) || grapheme == "\0" ? " " : grapheme);
                }

                text.Append(row.ToString().TrimEnd()).Append('\n');
            }

            return text.ToString();
        }
    }

    /// <summary>Attributes of every cell.</summary>
    internal IEnumerable<Terminal.Gui.Drawing.Attribute> Attributes => _app.Driver!.Contents!.Cast<Cell>().Select(c => c.Attribute).OfType<Terminal.Gui.Drawing.Attribute>();

    internal string LastRow => Screen.TrimEnd('\n').Split('\n')[^1];

    internal ScreenHarness Keys(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            _app.InjectKey(key);
            Pump();
        }

        return this;
    }

    internal ScreenHarness Type(string text) => Keys([.. text.Select(c => new Key(c))]);

    /// <summary>Types into a field that is open, and hands it over.</summary>
    internal ScreenHarness Fill(string text) => Type(text).Keys(Key.Enter).Settle();

    /// <summary>Ends the program as a signal does.</summary>
    /// <returns>What is said of a text that could not be kept.</returns>
    internal string? End() => _conductor.Close();

    internal ScreenHarness Resize(int width, int height)
    {
        _app.Driver!.SetScreenSize(width, height);
        return Draw();
    }

    /// <summary>Lets time pass in steps of the clock's tick.</summary>
    internal ScreenHarness Wait(double seconds)
    {
        for (double left = seconds; left > 1e-9; left -= 0.1)
        {
            Time.Move(TimeSpan.FromSeconds(Math.Min(0.1, left)));
            _toolkitTime.Advance(TimeSpan.FromSeconds(0.1));
            Pump();
        }

        return this;
    }

    /// <summary>Waits until nothing is on its way to or from the store.</summary>
    internal ScreenHarness Settle() => Until(() => State is { Unanswered: 0, Entry: not { Waiting: true }, Clock.Stage: not TouchStage.Released });

    internal ScreenHarness Until(string text) => Until(() => Screen.Contains(text, StringComparison.Ordinal));

    internal ScreenHarness Until(Func<bool> done)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (!done())
        {
            // A bound for a test that would otherwise hang, far above what any step takes.
            if (watch.Elapsed > TimeSpan.FromSeconds(30))
            {
                throw new TimeoutException("not reached; the screen is\n" + Screen);
            }

            Thread.Sleep(1);
            Pump();
        }

        return Pump();
    }

    /// <summary>A job with cautions put away, board and joint known, and pins: unless others are named two checked ones and one pad.</summary>
    internal ScreenHarness WithJob(string board = "six-layer", string joint = "anchor", string pins = "1=VBUS 2=GND 3")
    {
        Keys(Key.N).Fill("Pump controller").Until("Cautions").Keys(Key.Enter).Settle();
        Keys(Key.CursorDown, Key.Enter).Fill(board).Keys(Key.CursorDown, Key.Enter).Fill(joint);
        return Keys(Key.A).Fill(pins);
    }

    /// <summary>The same with profiles that came with the program, for the real engines.</summary>
    internal ScreenHarness WithRealJob(string pins) => WithJob("six-layer-controller", "jack-anchor-six-layer", pins);

    public void Dispose()
    {
        _app.End(_session);
        _window.Dispose();
        Engines.Release();
        _conductor.Finish();
        _conductor.Dispose();
        Engines.Dispose();
        _app.Dispose();
        Folder.Dispose();
    }

    private ScreenHarness Pump()
    {
        _app.TimedEvents!.RunTimers();
        return Draw();
    }

    private ScreenHarness Draw()
    {
        _app.LayoutAndDraw();
        return this;
    }
}
