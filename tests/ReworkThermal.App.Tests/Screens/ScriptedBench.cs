using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using UnitsNet;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Engines that answer what a test wants: the screens are tested here, not the physics.</summary>
internal sealed class ScriptedBench : IMixDesk, IPlanDesk, IBenchRuns, IBudgetDesk, IDisposable
{
    /// <summary>Holds every plan run until a test lets it go on.</summary>
    internal ManualResetEventSlim PlanGate { get; } = new(initialState: true);

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
            ["bare", "flooded"],
            ["round-6"],
            ["hot-plate"],
            ["braid"],
            ["sound", "touched"],
            ["still-air"],
            new Dictionary<string, string> { ["heavy chisel"] = "heavy" }),
        this,
        this,
        this,
        this);

    public MixAnswer Reckon(MixQuestion question, CancellationToken cancellation) => new MixAnswer.Reckoned(new MixFigures(
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

    public PlanAnswer Plan(PlanForm form, Action<PlanProgress> progress, CancellationToken cancellation)
    {
        PlansAsked++;
        progress(new PlanProgress(0.4, "invented work"));
        PlanGate.Wait(cancellation);
        return form[PlanField.Refill] == "Sn63Pb37"
            ? new PlanAnswer.Refused(PlanField.Refill, "invented refusal")
            : new PlanAnswer.Answered(InventedPlans.Report);
    }

    public BenchStart Begin(TouchSetup setup) => Simulates
        ? new BenchStart.Ready(new StraightRun(), new BenchForecast(217, 320, 0.1, 0.3))
        : new BenchStart.ClockOnly("invented lack");

    public IReadOnlyDictionary<PadId, PadBudget> Reckon(JobState job, CancellationToken cancellation) => job.Pads.Values.ToDictionary(
        p => p.Pad,
        PadBudget (p) => p.Prior is null ? new PadBudget.Unknown("no prior") : new PadBudget.Known(0.05, 0.1 + (0.2 * p.Heats.Count), 0.5, "laminate", 0));

    public void Dispose() => PlanGate.Dispose();

    /// <summary>A joint that warms by 60 K a second.</summary>
    private sealed class StraightRun : IBenchRun
    {
        public BenchReading Advance(Duration elapsed) => At(elapsed.Seconds, 23 + (60 * elapsed.Seconds));

        public BenchRelease Release(Duration elapsed) => new(new TemperatureHistory([0, elapsed.Seconds], [23, 23 + (60 * elapsed.Seconds)]), elapsed.Seconds > 4);

        public CoolDown? Wait() => null;

        public BenchReading Cool(Duration sinceRelease) => At(1000 + sinceRelease.Seconds, 100);

        private static BenchReading At(double seconds, double celsius) => new(seconds, celsius, celsius - 20, celsius > 217 ? 1 : 0, celsius > 237, 0.1 + (seconds / 100));
    }
}
