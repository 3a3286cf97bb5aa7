using ReworkThermal.Core.HeatFlow;
using UnitsNet;
using Xunit.Abstractions;
using static ReworkThermal.Core.Tests.HeatFlowBench;

namespace ReworkThermal.Core.Tests.Behaviour;

public sealed class HeatFlowSketchTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(0, 25.0)]
    [InlineData(1, 25.0)]
    [InlineData(2, 25.0)]
    [InlineData(4, 25.0)]
    [InlineData(2, 100.0)]
    public void Sketch(int planes, double start)
    {
        // = Problem(Board(planes), Joint(planes, FourSpokes(), 0), Tip(radiusMm: radius), 5, start);
        foreach (double radius in new[] { 0.5, 0.55, 0.6, 0.7 })
        {
            double refine = 1;
            JointProblem problem = Problem(Board(planes), Joint(planes, FourSpokes(), 0), Tip(radiusMm: radius), 5, start);
            HeatRun run = Run(problem, new SolverSettings { Refinement = refine });
            var w = System.Diagnostics.Stopwatch.StartNew();
            for (int i = 0; i < 5; i++) run = Run(problem, new SolverSettings { Refinement = refine, StepTolerance = TemperatureDelta.FromKelvins(0.1) });
            output.WriteLine($"planes {planes} r {radius} {w.Elapsed.TotalMilliseconds / 5:0.0} ms near {run.Probes[ProbeNames.NearPad].At(5):0.0} far {run.Probes[ProbeNames.FarPad].At(5):0.0} cold {run.Probes[ProbeNames.ColdestSolder].At(5):0.0} {run.Mesh} {run.Energy.BalanceError:e1} flow {run.Flow}");
        }
    }
}
