using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>Runs a joint problem: touches one after the other, the board keeping its heat between them.</summary>
internal sealed class JointRunner
{
    private readonly JointProblem _problem;
    private readonly SolverSettings _settings;
    private readonly JointBench _bench;
    private readonly TransientEngine _engine;
    private readonly RunRecorder _recorder;
    private readonly List<Probe> _probes;

    internal JointRunner(JointProblem problem, IReadOnlyList<TipSource> tips, IReadOnlyList<JetSource> jets, SolverSettings settings)
    {
        _problem = problem;
        _settings = settings;
        _bench = new JointBench(problem, tips, jets, settings.Refinement);
        Touch? first = problem.Touches.Count > 0 ? problem.Touches[0] : null;
        TipSource? firstTip = problem.Touches.FirstOrDefault(t => t.Tip is not null)?.Tip ?? (tips.Count > 0 ? tips[0] : null);
        if (firstTip is not null)
        {
            _bench.Apply(firstTip, null, BoardSide.Top, 0);
            _bench.Lift();
        }

        _probes = JointProbes.Of(problem, _bench, first?.Side ?? BoardSide.Top);
        SolderWatch watch = new(_bench.Mesh.SolderCells, _bench.Mesh.SolderVolumes(), problem.FlowTemperature.Kelvins, new BarrelFront(_bench.Mesh, first?.Side ?? BoardSide.Top, problem.FlowTemperature.Kelvins));
        _recorder = new RunRecorder(_bench.System, _probes, watch);
        _engine = new TransientEngine(_bench.System, settings.ControlFor(Math.Max(1, problem.End.Seconds)), _recorder);
        _recorder.ChannelWatts = _engine.Solver.ChannelWatts;
    }

    internal JointBench Bench => _bench;

    internal TransientEngine Engine => _engine;

    internal RunRecorder Recorder => _recorder;

    internal IReadOnlyList<Probe> Probes => _probes;

    /// <summary>Brings board and tools to their state at time zero.</summary>
    /// <returns>Whether the settled state over the preheater was found.</returns>
    internal bool Begin()
    {
        double start = _problem.Start.Kelvins;
        _engine.StartQuietly(_ => start);
        bool settled = _problem.Preheat is not { Settled: true } || _engine.Settle();
        _engine.Record();
        return settled;
    }

    internal void Put(TipSource? tip, JetSource? jet, BoardSide side, BraidLayer? braid = null)
    {
        _bench.Apply(tip, jet, side, _engine.TimeS, braid);
        _engine.Restart(FirstStep);
    }

    internal void Lift()
    {
        _bench.Lift();
        _engine.Restart(FirstStep);
    }

    internal HeatOutcome Run(CancellationToken cancellation)
    {
        if (!Begin())
        {
            return new HeatOutcome.NotConverged("the settled state of the board over the preheater was not found");
        }

        foreach (Touch touch in _problem.Touches)
        {
            if (!_engine.AdvanceTo(touch.Start.Seconds, cancellation))
            {
                return HeatSolver.Stuck(_engine);
            }

            Put(touch.Tip, touch.Jet, touch.Side, touch.Braid);
            if (!_engine.AdvanceTo(touch.End.Seconds, cancellation))
            {
                return HeatSolver.Stuck(_engine);
            }

            Lift();
        }

        return _engine.AdvanceTo(_problem.End.Seconds, cancellation)
            ? new HeatOutcome.Completed(JointReport.Make(_problem, this, RunReport.Make(_bench.System, _engine, _recorder, _probes)))
            : HeatSolver.Stuck(_engine);
    }

    private double FirstStep => _settings.FirstStep?.Seconds ?? 1e-3;
}
