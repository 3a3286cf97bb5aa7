using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>
/// Solves heat-flow problems. Start reading this room here: a problem (<see cref="PosedProblem"/>, or a joint on its board) becomes a
/// <see cref="CellGrid"/> of materials, a <see cref="ThermalSystem"/> of rate equations, and a <see cref="TransientEngine"/> that
/// marches it; a <see cref="RunRecorder"/> keeps what is asked for.
/// </summary>
public static class HeatSolver
{
    /// <summary>Solves a problem posed by hand.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="settings">How fine; null for the defaults.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The run, or why there is none. A steady problem has one sample.</returns>
    public static HeatOutcome Solve(PosedProblem problem, SolverSettings? settings = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        settings ??= new SolverSettings();
        try
        {
            return OnTwoMeshes(settings, s => March(problem, s, PosedCompiler.Compile(problem, s), cancellation));
        }
        catch (ImpossibleGeometryException impossible)
        {
            return new HeatOutcome.Impossible(impossible.Message);
        }
    }

    /// <summary>Solves a joint on its board with what the tools do to it.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="settings">How fine; null for the defaults.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The run, or why there is none.</returns>
    public static HeatOutcome Solve(JointProblem problem, SolverSettings? settings = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (problem.Fault() is { } rule)
        {
            return new HeatOutcome.Impossible(rule);
        }

        settings ??= new SolverSettings();
        List<TipSource> tips = [.. problem.Touches.Select(t => t.Tip).OfType<TipSource>()];
        List<JetSource> jets = [.. problem.Touches.Select(t => t.Jet).OfType<JetSource>()];
        return OnTwoMeshes(settings, s => new JointRunner(problem, tips, jets, s).Run(cancellation));
    }

    // One run; or, to state the error of the mesh, one on the mesh and one on the doubled mesh.
    private static HeatOutcome OnTwoMeshes(SolverSettings settings, Func<SolverSettings, HeatOutcome> solve)
    {
        HeatOutcome outcome = solve(settings);
        if (!settings.EstimateMeshError || outcome is not HeatOutcome.Completed coarse)
        {
            return outcome;
        }

        HeatOutcome doubled = solve(settings with { Refinement = settings.Refinement * 2 });
        return doubled is HeatOutcome.Completed fine ? new HeatOutcome.Completed(MeshError.Stated(coarse.Run, fine.Run)) : doubled;
    }

    private static HeatOutcome March(PosedProblem problem, SolverSettings settings, ThermalSystem system, CancellationToken cancellation)
    {
        List<Probe> probes = [.. problem.Probes.Select(p => new Probe.Point(p.Name, p.Radius.Meters, p.Height.Meters))];
        RunRecorder recorder = new(system, probes, SolderWatch.OfMelting(system.Grid));
        double span = problem.Stages.Sum(s => s.Span.Seconds);
        TransientEngine engine = new(system, settings.ControlFor(span), problem.Steady ? null : recorder);
        recorder.ChannelWatts = engine.Solver.ChannelWatts;
        PosedCompiler.Apply(system, problem.Stages[0].Patches);
        engine.Start(StartOf(problem, system.Grid));
        if (problem.Steady)
        {
            if (!engine.Settle())
            {
                return new HeatOutcome.NotConverged("the steady state was not found; at least one face must exchange heat with something of a known temperature");
            }

            recorder.Take(0, engine.BodyTemperaturesK);
            recorder.Commit();
            return new HeatOutcome.Completed(RunReport.Make(system, engine, recorder, probes));
        }

        double end = 0;
        for (int s = 0; s < problem.Stages.Count; s++)
        {
            if (s > 0)
            {
                PosedCompiler.Apply(system, problem.Stages[s].Patches);
                engine.Restart(settings.ControlFor(problem.Stages[s].Span.Seconds).FirstStepS);
            }

            end += problem.Stages[s].Span.Seconds;
            if (!engine.AdvanceTo(end, cancellation))
            {
                return Stuck(engine);
            }
        }

        return new HeatOutcome.Completed(RunReport.Make(system, engine, recorder, probes));
    }

    internal static HeatOutcome Stuck(TransientEngine engine) => new HeatOutcome.NotConverged(string.Create(
        CultureInfo.InvariantCulture,
        $"from {engine.TimeS:0.######} s on no time step, however short, could be solved ({WhyStuck(engine.LastFailure)}); check the materials for extreme values"));

    private static string WhyStuck(StageOutcome failure) => failure switch
    {
        StageOutcome.NotFinite => "numbers overflowed",
        StageOutcome.TooManyRounds => "the iteration did not settle",
        _ => "its error stayed above the tolerance",
    };

    private static Func<int, double> StartOf(PosedProblem problem, CellGrid grid)
    {
        double[] kelvin = new double[grid.Count];
        for (int i = 0; i < grid.Radial.Count; i++)
        {
            for (int j = 0; j < grid.Axial.Count; j++)
            {
                kelvin[grid.Index(i, j)] = PosedCompiler.StartAt(problem, grid.Radial.Centres[i], grid.Axial.Centres[j]);
            }
        }

        return p => kelvin[p];
    }
}
