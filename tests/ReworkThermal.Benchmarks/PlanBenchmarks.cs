using BenchmarkDotNet.Attributes;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Data;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Thermodynamics;

namespace ReworkThermal.Benchmarks;

/// <summary>How long the demo request takes. The aims hold on two quiet cores: a plan under 3 s, all plans with 200 samples under 15 s.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private Workshop _workshop = null!;
    private PhaseEngine _engine = null!;
    private PlanRequest _request = null!;
    private PlanOutcome.Planned _planned = null!;

    /// <summary>Reads the data and searches once.</summary>
    [GlobalSetup]
    public void Setup()
    {
        DataRoot root = DataRoot.BesideProgram;
        _workshop = Workshop.Load(root);
        _engine = new PhaseEngine(ThermodynamicFiles.Load(Path.Combine(root.Alloys, "thermodynamics")));
        _request = PlanRequestFile.Read(Path.Combine(root.Profiles, "requests", "pump-controller-jack.toml"), _workshop);
        _planned = (PlanOutcome.Planned)FullPlan();
    }

    /// <summary>A full plan without samples.</summary>
    [Benchmark(Baseline = true)]
    public PlanOutcome FullPlan() => new PlanSearch(_engine, _workshop.Alloys.Properties, _workshop.Limits).Search(_request);

    /// <summary>All plans of the answer sampled on 200 benches each.</summary>
    [Benchmark]
    public PlanOutcome EveryPlanSampled() =>
        new PlanSampler(_engine, _workshop.Alloys.Properties, _workshop.Limits).Sampled(_request, _planned, PlanSampler.UsualSamples);
}
