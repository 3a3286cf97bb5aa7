using System.Diagnostics;
using System.Text.Json;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;

namespace ReworkThermal.Benchmarks;

/// <summary>
/// Prints, as JSON, the comparison problem and this program's answers and its fastest times at several tolerances, for a script that solves the same
/// problem with another solver (tests/scipy-comparison).
/// </summary>
internal static class HeatComparison
{
    private const double Seconds = 20;
    private static readonly double[] _times = [0.5, 1, 2, 5, 10, 20];
    private static readonly double[] _tolerances = [1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.001];

    internal static int Print()
    {
        PosedProblem problem = ComparisonHole.Problem(Seconds);
        List<object> runs = [];
        foreach (double tolerance in _tolerances)
        {
            SolverSettings settings = new() { StepTolerance = TemperatureDelta.FromKelvins(tolerance) };
            for (int warm = 0; warm < 300; warm++)
            {
                HeatSolver.Solve(problem, settings);
            }

            List<double> milliseconds = [];
            HeatRun? run = null;
            for (int i = 0; i < 60; i++)
            {
                Stopwatch watch = Stopwatch.StartNew();
                run = (HeatSolver.Solve(problem, settings) as HeatOutcome.Completed)?.Run ?? throw new InvalidOperationException("the comparison run did not converge");
                milliseconds.Add(watch.Elapsed.TotalMilliseconds);
            }

            milliseconds.Sort();
            runs.Add(new
            {
                tolerance_k = tolerance,
                time_ms = milliseconds[0],
                steps = run!.Mesh.Steps,
                celsius = ComparisonHole.Watched.ToDictionary(w => w.Name, w => _times.Select(t => run.Probes[w.Name].At(t)).ToArray()),
            });
        }

        Console.WriteLine(JsonSerializer.Serialize(new
        {
            seconds = Seconds,
            times_s = _times,
            radial = ComparisonHole.Radial.Select(d => new[] { d.To, d.Cells, d.Ratio }),
            axial = ComparisonHole.Axial.Select(d => new[] { d.To, d.Cells, d.Ratio }),
            blocks = ComparisonHole.Blocks,
            watched = ComparisonHole.Watched.ToDictionary(w => w.Name, w => new[] { w.Radial, w.Axial }),
            runs,
        }));
        return 0;
    }
}
