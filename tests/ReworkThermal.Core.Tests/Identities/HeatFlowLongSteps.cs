using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Tests.Published;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>A random mix on a shipped board under one tool for 10 to 130 s, then cooling, with steps as long as the error control allows.</summary>
internal sealed class HeatFlowLongSteps : IStageObserver
{
    private static readonly string[] _boards = ["six-layer-controller", "eight-layer-drive", "two-layer-sensor"];
    private static readonly string[] _joints = ["jack-anchor-six-layer", "jack-anchor-eight-layer", "jack-anchor-two-layer"];
    private static readonly string[] _nozzles = ["round-4", "round-6", "round-8"];

    private readonly JointBench _bench;
    private readonly TransientEngine _engine;
    private readonly TipSource? _tip;
    private readonly JetSource? _jet;
    private readonly double _startK;
    private readonly double _span;
    private readonly string _text;
    private readonly List<double> _pendingAbove = [];
    private readonly List<double> _pendingBelow = [];

    internal HeatFlowLongSteps(int seed)
    {
        Random random = new(seed);
        MeltingBehaviour melting = PhasesData.Melt(PhasesData.RandomMix(seed));
        EnthalpyCurve curve = new SolderHeat(Shelf.Alloys.Properties).CurveOf(melting, 1 + random.NextDouble());
        int which = random.Next(_boards.Length);
        Surroundings room = PlanDemo.Workshop.Profiles.Rooms["still-air"];
        Board board = PlanDemo.Workshop.Profiles.Boards[_boards[which]];
        double start = 20 + (140 * random.NextDouble());
        double set = 260 + (220 * random.NextDouble());
        ToleranceK = Math.Exp(Math.Log(0.05) + (random.NextDouble() * Math.Log(100)));
        _span = 10 + (120 * random.NextDouble());
        if (random.NextDouble() < 0.7)
        {
            AirNozzle nozzle = PlanDemo.Workshop.Profiles.Nozzles[_nozzles[random.Next(_nozzles.Length)]];
            VolumeFlow flow = VolumeFlow.FromLitersPerMinute(20 + (20 * random.NextDouble()));
            _jet = Ready(new AirSetting(nozzle, Temperature.FromDegreesCelsius(set), flow, nozzle.Diameter * (2 + (4 * random.NextDouble())), room.Room).ToSource());
        }
        else
        {
            _tip = Ready(new IronSetting(PlanDemo.Workshop.Profiles.Irons["heavy"], Temperature.FromDegreesCelsius(Math.Min(set, 420)), PlanDemo.Workshop.Profiles.Contacts[ContactState.Flooded]).ToSource());
        }

        JointProblem problem = new()
        {
            Site = PlanDemo.Workshop.Profiles.Joints[_joints[which]].On(board),
            Solder = curve,
            FlowTemperature = melting.Flow,
            Superheat = TemperatureDelta.Zero,
            Surroundings = room,
            Start = Temperature.FromDegreesCelsius(start),
            Preheat = null,
            Touches = [],
            End = Duration.FromSeconds(_span),
        };
        _bench = new JointBench(problem, _tip is null ? [] : [_tip], [.. problem.Touches.Select(t => t.Jet).OfType<JetSource>()], 1);
        _engine = new TransientEngine(_bench.System, new SolverSettings { StepTolerance = TemperatureDelta.FromKelvins(ToleranceK) }.ControlFor(_span), this);
        _startK = problem.Start.Kelvins;
        LeastK = Math.Min(room.Room.Kelvins, problem.Start.Kelvins);
        MostK = Math.Max(problem.Start.Kelvins, _tip?.Set.Kelvins ?? _jet!.Gas.Kelvins);
        _text = $"{melting.Composition} on {_boards[which]}, {(_jet is null ? "iron" : "air")} {set:0} °C for {_span:0} s from {start:0} °C, tolerance {ToleranceK:0.00} K";
    }

    /// <summary>Error allowed per step [K].</summary>
    internal double ToleranceK { get; }

    /// <summary>Lowest temperature of anything that exchanges heat, the start included [K].</summary>
    internal double LeastK { get; }

    /// <summary>Highest temperature of anything that exchanges heat, the start included [K].</summary>
    internal double MostK { get; }

    /// <summary>Largest excess over <see cref="MostK"/> in any cell, body or surface of any accepted stage [K].</summary>
    internal double AboveK { get; private set; }

    /// <summary>Largest shortfall from <see cref="LeastK"/> [K].</summary>
    internal double BelowK { get; private set; }

    /// <summary>The march itself.</summary>
    internal TransientEngine Engine => _engine;

    /// <inheritdoc/>
    public void Take(double seconds, ReadOnlySpan<double> bodyK)
    {
        double most = Math.Max(Largest(_bench.System.CellTemperaturesK), Math.Max(Largest(bodyK), Largest(_bench.System.Surfaces.TemperatureK)));
        double least = Math.Min(Smallest(_bench.System.CellTemperaturesK), Math.Min(Smallest(bodyK), Smallest(_bench.System.Surfaces.TemperatureK)));
        _pendingAbove.Add(most - MostK);
        _pendingBelow.Add(LeastK - least);
    }

    /// <inheritdoc/>
    public void Commit()
    {
        AboveK = Math.Max(AboveK, _pendingAbove.DefaultIfEmpty(0).Max());
        BelowK = Math.Max(BelowK, _pendingBelow.DefaultIfEmpty(0).Max());
        Discard();
    }

    /// <inheritdoc/>
    public void Discard()
    {
        _pendingAbove.Clear();
        _pendingBelow.Clear();
    }

    /// <inheritdoc/>
    public override string ToString() => _text;

    /// <summary>Marches through the touch and as long again without the tool.</summary>
    /// <returns>Whether it got to the end.</returns>
    internal bool Run()
    {
        _engine.Start(_ => _startK);
        _bench.Apply(_tip, _jet, BoardSide.Top, 0);
        _engine.Restart(1e-3);
        if (!_engine.AdvanceTo(_span, CancellationToken.None))
        {
            return false;
        }

        _bench.Lift();
        _engine.Restart(1e-3);
        return _engine.AdvanceTo(2 * _span, CancellationToken.None);
    }

    private static double Largest(ReadOnlySpan<double> values)
    {
        double largest = double.NegativeInfinity;
        foreach (double value in values)
        {
            largest = Math.Max(largest, value);
        }

        return largest;
    }

    private static double Smallest(ReadOnlySpan<double> values)
    {
        double smallest = double.PositiveInfinity;
        foreach (double value in values)
        {
            smallest = Math.Min(smallest, value);
        }

        return smallest;
    }

    private static T Ready<T>(SettingOutcome<T> outcome) => Assert.IsType<SettingOutcome<T>.Ready>(outcome).Source;
}
