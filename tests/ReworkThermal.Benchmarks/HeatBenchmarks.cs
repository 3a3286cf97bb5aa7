using BenchmarkDotNet.Attributes;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Benchmarks;

/// <summary>
/// Heat runs of 20 s bench time: the plated hole of the comparison on its mesh of 40 x 26 cells, a joint of the demo with melting, and
/// one tenth of a second of a live run.
/// </summary>
[MemoryDiagnoser]
public class HeatBenchmarks
{
    private readonly PosedProblem _hole = ComparisonHole.Problem(20);
    private readonly SolverSettings _settings = new();
    private JointProblem? _joint;
    private LiveRun? _live;

    /// <summary>Loads the demo joint and starts a live run on it.</summary>
    [GlobalSetup]
    public void Load()
    {
        _joint = DemoJoint.Problem(20);
        TipSource tip = _joint.Touches[0].Tip!;
        _live = LiveRun.Start(_joint, [tip]);
        _live.Put(tip, null, BoardSide.Bottom);
        _live.Advance(Duration.FromSeconds(1));
    }

    /// <summary>A plated hole without melting, 40 x 26 cells, 20 s.</summary>
    /// <returns>What came of it.</returns>
    [Benchmark(Baseline = true)]
    public HeatOutcome PlatedHole() => HeatSolver.Solve(_hole, _settings);

    /// <summary>The demo joint with melting solder, radiation and a settled preheater, 20 s.</summary>
    /// <returns>What came of it.</returns>
    [Benchmark]
    public HeatOutcome DemoTouch() => HeatSolver.Solve(_joint!, _settings);

    /// <summary>One step of the bench clock.</summary>
    /// <returns>Whether it got there.</returns>
    [Benchmark]
    public bool LiveTenth() => _live!.Advance(Duration.FromSeconds(0.1));
}
