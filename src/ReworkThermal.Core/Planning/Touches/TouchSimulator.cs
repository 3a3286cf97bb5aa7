using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>Simulates one touch on the joint of a workload, on the bench as a calibration knows it.</summary>
internal sealed class TouchSimulator(Workload work)
{
    private readonly BenchVariation _bench = LearnedBench.Of(work.Request);
    private readonly PlanRequest _request = LearnedBench.Of(work.Request).Applied(work.Request);

    // Time is advanced by this much between looks at whether a touch may end.
    private static readonly Duration _look = Duration.FromSeconds(0.5);

    private static readonly SolverSettings _fineness = new();

    // Six tenths of the cells each way cost a third of the work; times to flow move by up to 3 %, temperatures by 0.3 K.
    private const double ScreeningRefinement = 0.6;
    private static readonly TemperatureDelta _screeningTolerance = TemperatureDelta.FromKelvins(0.5);

    /// <summary>Whether a preheater can hold the board at a temperature.</summary>
    internal bool CanHold(BoardHeat heat) => HeatFromBelow(_request, _bench.Applied(heat)) is not null;

    /// <summary>Whether a tool can be set so.</summary>
    internal bool CanSet(ToolSetting setting) => ToolsOf(_request, _bench.Applied(setting)) is not null;

    /// <summary>Runs a touch.</summary>
    /// <param name="solder">Heat content of the solder on the joint.</param>
    /// <param name="flowC">Its flow temperature [°C].</param>
    /// <param name="setting">How the tools are set.</param>
    /// <param name="touch">How long the tool stays on.</param>
    /// <param name="end">End of the run, not before the end of the touch.</param>
    /// <param name="purpose">What the run is for.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <param name="braid">Braid between tip and joint; null for none.</param>
    /// <returns>The course of the touch, or null when the tools cannot be set so or the run did not converge.</returns>
    internal TouchCourse? Run(EnthalpyCurve solder, double flowC, ToolSetting setting, Duration touch, Duration end, RunPurpose purpose, CancellationToken cancellation, BraidLayer? braid = null)
    {
        ToolSetting real = _bench.Applied(setting);
        if (ToolsOf(_request, real) is not { } tools || Problem(_request, solder, flowC, real) is not { } problem)
        {
            return null;
        }

        problem = problem with
        {
            Touches = Touches(tools, work.Request.Side, real.Lead, touch, braid),
            End = real.Lead + end,
        };
        SolverSettings fineness = _fineness;
        if (purpose is RunPurpose.Screening)
        {
            fineness = fineness with { Refinement = ScreeningRefinement, StepTolerance = _screeningTolerance };
        }

        return HeatSolver.Solve(problem, fineness, cancellation) is HeatOutcome.Completed completed
            ? new TouchCourse(completed.Run, real.Lead, work.Damage.Kinetics, work.Request.Site.Neighbours)
            : null;
    }

    /// <summary>Runs a touch only until it has flowed, has its superheat and has been worked, at most for a given time.</summary>
    /// <param name="bench">Joint and bench; need not be those of the workload.</param>
    /// <param name="solder">Heat content of the solder on the joint.</param>
    /// <param name="flowC">Flow temperature of the solder [°C].</param>
    /// <param name="superheat">How far above it the coldest solder must come.</param>
    /// <param name="setting">How the tools are set.</param>
    /// <param name="after">How long to go on afterwards.</param>
    /// <param name="most">When to give up.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>What was seen, or null when the tools cannot be set so or the run did not converge.</returns>
    internal static BriefRun? RunUntilFlow(
        PlanRequest bench,
        EnthalpyCurve solder,
        double flowC,
        TemperatureDelta superheat,
        ToolSetting setting,
        Duration after,
        Duration most,
        CancellationToken cancellation)
    {
        if (ToolsOf(bench, setting) is not { } tools || Problem(bench, solder, flowC, setting) is not { } problem)
        {
            return null;
        }

        if (Started(problem with { Superheat = superheat }, tools) is not { } run || !Warmed(run, tools, bench.Side, setting.Lead, cancellation))
        {
            return null;
        }

        run.Put(tools.Tip, tools.Jet, bench.Side);
        Duration latest = setting.Lead + most;
        while (!run.IsWorkable && run.Elapsed < latest - Duration.FromMilliseconds(1))
        {
            if (!run.Advance(UnitMath.Min(_look, latest - run.Elapsed), cancellation))
            {
                return null;
            }
        }

        BriefRun reached = BriefRun.Of(run, flowC, superheat, setting.Lead);
        double sofar = (run.Elapsed - setting.Lead).Seconds;
        double missing = (reached.WorkableS ?? sofar) + after.Seconds - sofar;
        return reached.WorkableS is null || missing <= 0 || run.Advance(Duration.FromSeconds(missing), cancellation) ? BriefRun.Of(run, flowC, superheat, setting.Lead) : null;
    }

    /// <summary>Runs a touch up to a time and reads a probe.</summary>
    /// <param name="bench">Joint and bench.</param>
    /// <param name="solder">Heat content of the solder on the joint.</param>
    /// <param name="flowC">Its flow temperature [°C].</param>
    /// <param name="setting">How the tools are set.</param>
    /// <param name="probe">A name of <see cref="ProbeNames"/>.</param>
    /// <param name="after">When to read.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The temperature [°C], or null when the tools cannot be set so or the run did not converge.</returns>
    internal static double? ReadAt(
        PlanRequest bench,
        EnthalpyCurve solder,
        double flowC,
        ToolSetting setting,
        string probe,
        Duration after,
        CancellationToken cancellation)
    {
        if (ToolsOf(bench, setting) is not { } tools || Problem(bench, solder, flowC, setting) is not { } problem)
        {
            return null;
        }

        problem = problem with
        {
            Touches = Touches(tools, bench.Side, setting.Lead, after),
            End = setting.Lead + after,
        };
        return HeatSolver.Solve(problem, _fineness, cancellation) is HeatOutcome.Completed completed && completed.Run.Probes.TryGetValue(probe, out TemperatureHistory? history)
            ? history.At((setting.Lead + after).Seconds)
            : null;
    }

    private static List<Touch> Touches(OnJoint tools, BoardSide side, Duration lead, Duration touch, BraidLayer? braid = null)
    {
        Touch main = new() { Start = lead, Span = touch, Side = side, Tip = tools.Tip, Jet = tools.Jet, Braid = tools.Tip is null ? null : braid };
        return lead > Duration.Zero ? [new Touch { Start = Duration.Zero, Span = lead, Side = side, Jet = tools.Jet }, main] : [main];
    }

    private static bool Warmed(LiveRun run, OnJoint tools, BoardSide side, Duration lead, CancellationToken cancellation)
    {
        if (lead <= Duration.Zero)
        {
            return true;
        }

        run.Put(null, tools.Jet, side);
        return run.Advance(lead, cancellation);
    }

    private static LiveRun? Started(JointProblem problem, OnJoint tools) =>
        LiveRun.Start(problem with { Superheat = TemperatureDelta.Zero }, tools.Tip is null ? [] : [tools.Tip], tools.Jet is null ? [] : [tools.Jet], _fineness);

    private static JointProblem? Problem(PlanRequest request, EnthalpyCurve solder, double flowC, ToolSetting setting)
    {
        BottomHeat? below = null;
        if (setting.Preheat is { } heat && (below = HeatFromBelow(request, heat)) is null)
        {
            return null;
        }

        return new JointProblem
        {
            Site = request.Site,
            Solder = solder,
            FlowTemperature = Temperature.FromDegreesCelsius(flowC),
            Superheat = request.Limits.Superheat.Value,
            Surroundings = request.Bench.Room,
            Start = request.Bench.Room.Room,
            Preheat = below,
            Touches = [],
            End = request.Limits.MostDwell.Value,
        };
    }

    private static OnJoint? ToolsOf(PlanRequest request, ToolSetting setting)
    {
        if (setting.Iron is not { } iron)
        {
            return setting.Air is { } air && JetOf(request, air, setting.Set) is { } alone ? new OnJoint(null, alone) : null;
        }

        if (new IronSetting(iron, setting.Set, request.Bench.Contact).ToSource() is not SettingOutcome<TipSource>.Ready tip)
        {
            return null;
        }

        return setting.Assist is not { } help ? new OnJoint(tip.Source, null)
            : JetOf(request, help.Air, help.Set) is { } jet ? new OnJoint(tip.Source, jet)
            : null;
    }

    private static JetSource? JetOf(PlanRequest request, HotAir air, Temperature set) =>
        new AirSetting(air.Nozzle, set, air.Flow, air.Distance, request.Bench.Room.Room).ToSource() is SettingOutcome<JetSource>.Ready jet
            ? jet.Source.WithCoefficientsScaled(air.FilmFactor)
            : null;

    private static BottomHeat? HeatFromBelow(PlanRequest request, BoardHeat heat) =>
        new PreheatSetting(heat.Preheater, request.Site.Board, request.Bench.Room).ToBoardTemperature(heat.Board) is SettingOutcome<BottomHeat>.Ready ready
            ? ready.Source
            : null;

    private sealed record OnJoint(TipSource? Tip, JetSource? Jet);
}
