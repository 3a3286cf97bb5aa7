using System.Collections.Concurrent;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using UnitsNet;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Engines that answer what a test wants: the screens are tested here, not the physics.</summary>
internal sealed class ScriptedBench : IMixDesk, IPlanDesk, IBenchRuns, IBudgetDesk, ILessonDesk, IRecordDesk, IDisposable
{
    /// <summary>Holds every plan run until a test lets it go on.</summary>
    internal ManualResetEventSlim PlanGate { get; } = new(initialState: true);

    /// <summary>Holds the sampling of plans likewise.</summary>
    internal ManualResetEventSlim SamplingGate { get; } = new(initialState: true);

    /// <summary>Holds every other engine likewise.</summary>
    internal ManualResetEventSlim Gate { get; } = new(initialState: true);

    /// <summary>Threads on which engines were called.</summary>
    internal ConcurrentBag<(string Engine, int Thread)> Calls { get; } = [];

    /// <summary>What was handed over to be learned.</summary>
    internal ConcurrentQueue<(TimedMeasurement Measurement, Lesson Lesson)> Lessons { get; } = new();

    /// <summary>What comes of writing the record, in turn.</summary>
    internal ConcurrentQueue<RecordAnswer> RecordAnswers { get; } = new();

    /// <summary>Whether touches can be simulated.</summary>
    internal bool Simulates { get; set; } = true;

    /// <summary>How often a plan was asked for.</summary>
    internal int PlansAsked { get; private set; }

    internal Workbench Open() => new(
        new ShelfNames(
            ["two-layer", "six-layer"],
            ["anchor", "terminal"],
            ["jack"],
            ["Sn96.5Ag3Cu0.5", "Sn63Pb37"],
            ["Bi58Sn42", "Sn63Pb37"],
            ["fine", "heavy"],
            ["round-6"],
            ["hot-plate"],
            ["braid"],
            ["sound", "touched"],
            ["still-air"],
            new Dictionary<string, string> { ["heavy chisel"] = "heavy" }),
        this,
        this,
        this,
        this,
        this,
        this);

    public MixAnswer Reckon(MixQuestion question, CancellationToken cancellation)
    {
        Hold("mix", cancellation);
        return new MixAnswer.Reckoned(new MixFigures(
            220 - question.SharePercent,
            222,
            138,
            137,
            3,
            [(138, 0.2), (180, 0.8), (222, 1)],
            10,
            5,
            new ResidueFigures(0.1, 180, 140, 0, 0.002, 4),
        ["invented remark"]));
    }

    public PlanAnswer Plan(PlanForm form, JobState? job, Action<PlanProgress> progress, Action<PlanAnswer.Answered> ranked, CancellationToken cancellation)
    {
        Calls.Add(("plan", Environment.CurrentManagedThreadId));
        PlansAsked++;
        progress(new PlanProgress(0.4, "invented work"));
        PlanGate.Wait(cancellation);
        if (form[PlanField.Refill] == "Sn63Pb37")
        {
            return new PlanAnswer.Refused(PlanField.Refill, "invented refusal");
        }

        ranked(new PlanAnswer.Answered(InventedPlans.Report, LearnedFrom: 2));
        progress(new PlanProgress(0.3, "invented sampling"));
        SamplingGate.Wait(cancellation);
        return new PlanAnswer.Answered(InventedPlans.Sampled, LearnedFrom: 2);
    }

    public BenchStart Begin(TouchSetup setup)
    {
        Hold("touch", CancellationToken.None);
        return Simulates
            ? new BenchStart.Ready(new StraightRun(new ToolUse(setup.Start.Tools)), new BenchForecast(217, 320, 0.1, 0.3))
            : new BenchStart.ClockOnly("invented lack");
    }

    public IReadOnlyDictionary<PadId, PadBudget> Reckon(JobState job, CancellationToken cancellation)
    {
        Hold("budgets", cancellation);
        return job.Pads.Values.ToDictionary(
            p => p.Pad,
            PadBudget (p) => p.Prior is null ? new PadBudget.Unknown("no prior") : new PadBudget.Known(0.05, 0.1 + (0.2 * p.Heats.Count), 0.5, "laminate", 0));
    }

    public LessonAnswer Learn(JobState job, int number, TimedMeasurement measurement, Lesson lesson, CancellationToken cancellation)
    {
        Hold("lessons", cancellation);
        Lessons.Enqueue((measurement, lesson));
        return lesson.WhyNot is { } reason ? new LessonAnswer.NotLearned(reason) : new LessonAnswer.Learned(Lessons.Count);
    }

    public LessonAnswer? Forget(JobState job, int number, PlanForm bench, CancellationToken cancellation) => new LessonAnswer.TakenBack(0);

    public RecordAnswer Write(JobState job, bool replace)
    {
        Hold("record", CancellationToken.None);
        return RecordAnswers.TryDequeue(out RecordAnswer? answer) ? answer : new RecordAnswer.Failed("nothing was invented for this");
    }

    /// <summary>Lets everything go on.</summary>
    internal void Release()
    {
        PlanGate.Set();
        SamplingGate.Set();
        Gate.Set();
    }

    public void Dispose()
    {
        PlanGate.Dispose();
        SamplingGate.Dispose();
        Gate.Dispose();
    }

    private void Hold(string engine, CancellationToken cancellation)
    {
        Calls.Add((engine, Environment.CurrentManagedThreadId));
        Gate.Wait(cancellation);
    }

    /// <summary>A joint that warms by 60 K a second.</summary>
    private sealed class StraightRun(ToolUse use) : IBenchRun
    {
        public BenchReading Advance(Duration elapsed) => At(elapsed.Seconds, 23 + (60 * elapsed.Seconds));

        public BenchRelease Release(Duration elapsed) => new(new TemperatureHistory([0, elapsed.Seconds], [23, 23 + (60 * elapsed.Seconds)]), elapsed.Seconds > 4, use);

        public CoolDown? Wait() => null;

        public BenchReading Cool(Duration sinceRelease) => At(1000 + sinceRelease.Seconds, 100);

        private static BenchReading At(double seconds, double celsius) => new(seconds, celsius, celsius - 20, celsius > 217 ? 1 : 0, celsius > 237, 0.1 + (seconds / 100));
    }
}
