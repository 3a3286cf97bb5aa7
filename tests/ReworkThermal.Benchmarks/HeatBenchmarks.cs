using BenchmarkDotNet.Attributes;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;

namespace ReworkThermal.Benchmarks;

/// <summary>
/// Heat runs of 20 s bench time: the plated hole of the comparison on its mesh of 40 x 26 cells, a joint of the demo with melting, one
/// touch of hot air for 60 s, and a live run of 20 s read ten times a second.
/// </summary>
[MemoryDiagnoser]
public class HeatBenchmarks
{
    private readonly PosedProblem _hole = ComparisonHole.Problem(20);
    private readonly SolverSettings _settings = new();
    private JointProblem? _joint;
    private JointProblem? _air;

    /// <summary>Loads the demo joint.</summary>
    [GlobalSetup]
    public void Load()
    {
        _joint = DemoJoint.Problem(20);
        _air = DemoJoint.UnderAir(60);
    }

    /// <summary>A plated hole without melting, 40 x 26 cells, 20 s.</summary>
    /// <returns>What came of it.</returns>
    [Benchmark(Baseline = true)]
    public HeatOutcome PlatedHole() => HeatSolver.Solve(_hole, _settings);

    /// <summary>The demo joint with melting solder, radiation and a settled preheater, 20 s.</summary>
    /// <returns>What came of it.</returns>
    [Benchmark]
    public HeatOutcome DemoTouch() => HeatSolver.Solve(_joint!, _settings);

    /// <summary>The demo joint under hot air for 60 s: slow melting, long steps.</summary>
    /// <returns>What came of it.</returns>
    [Benchmark]
    public HeatOutcome DemoAir() => HeatSolver.Solve(_air!, _settings);

    /// <summary>A live run of 20 s bench time in steps of a tenth: ms over 20 000 is the share of a core that keeping up takes.</summary>
    /// <returns>The last reading.</returns>
    [Benchmark]
    public Temperature LiveTwentySeconds() => LiveBench.TwentySeconds(_joint!);
}
