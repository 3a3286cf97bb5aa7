using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Live simulations by the heat solver.</summary>
/// <param name="workshop">The data folders.</param>
/// <param name="poser">Poses touches.</param>
/// <param name="reckoner">Reckons what the pad has had.</param>
internal sealed class BenchRuns(Workshop workshop, JointPoser poser, PadReckoner reckoner) : IBenchRuns
{
    public BenchStart Begin(TouchSetup setup)
    {
        if (poser.Pose(setup) is not JointSetup.Posed posed)
        {
            return new BenchStart.ClockOnly(((JointSetup.Missing)poser.Pose(setup)).Reason);
        }

        PadHistory.Known? history = setup.Job.Pads.TryGetValue(setup.Start.Pads[0], out PadLedger? pad)
            ? reckoner.Of(setup.Job, pad) as PadHistory.Known
            : null;
        LiveRun run = LiveRun.Start(posed.Problem, posed.Tip is null ? [] : [posed.Tip]);
        run.Put(posed.Tip, posed.Jet, posed.Side);
        double? before = history is null ? null : history.Model.Budget(history.State).Share.Central;
        return new BenchStart.Ready(
            new BenchRun(run, posed, history),
            new BenchForecast(
                posed.Problem.FlowTemperature.DegreesCelsius,
                workshop.Planning.Limits.MostPadTemperature.Value.DegreesCelsius,
                before,
                setup.Stop is { } stop && history is not null ? AtStop(posed, history, stop) : null));
    }

    /// <summary>Budget when the tip comes off at the stop time, by a run ahead of the clock.</summary>
    private static double? AtStop(JointSetup.Posed posed, PadHistory.Known history, Duration stop)
    {
        Touch touch = new() { Start = Duration.Zero, Span = stop, Side = posed.Side, Tip = posed.Tip, Jet = posed.Jet };
        return HeatSolver.Solve(posed.Problem with { Touches = [touch], End = stop }) is HeatOutcome.Completed { Run: { } run }
            ? BenchRun.BudgetAfter(history, BenchRun.Hotter(run.Probes[ProbeNames.NearPad], run.Probes[ProbeNames.FarPad], 0), run.LiquidShare.Max() > 0)
            : null;
    }
}
