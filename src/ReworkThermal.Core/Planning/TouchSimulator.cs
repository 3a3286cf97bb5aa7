using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>Simulates one touch on the joint of a workload.</summary>
internal sealed class TouchSimulator(Workload work)
{
    private static readonly SolverSettings _fineness = new();

    /// <summary>Whether a preheater can hold the board at a temperature.</summary>
    internal bool CanHold(BoardHeat heat) => HeatFromBelow(heat) is not null;

    /// <summary>Runs a touch.</summary>
    /// <param name="solder">Heat content of the solder on the joint.</param>
    /// <param name="flowC">Its flow temperature [°C].</param>
    /// <param name="setting">How the tools are set.</param>
    /// <param name="touch">How long the tip stays on.</param>
    /// <param name="end">End of the run, not before the end of the touch.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The course of the touch, or null when the run did not converge.</returns>
    internal TouchCourse? Run(EnthalpyCurve solder, double flowC, ToolSetting setting, Duration touch, Duration end, CancellationToken cancellation)
    {
        PlanRequest request = work.Request;
        if (new IronSetting(setting.Iron, setting.Set, request.Bench.Contact).ToSource() is not SettingOutcome<TipSource>.Ready tip)
        {
            return null;
        }

        BottomHeat? below = setting.Preheat is null ? null : HeatFromBelow(setting.Preheat);
        JointProblem problem = new()
        {
            Site = request.Site,
            Solder = solder,
            FlowTemperature = Temperature.FromDegreesCelsius(flowC),
            Superheat = work.Limits.Superheat.Value,
            Surroundings = request.Bench.Room,
            Start = request.Bench.Room.Room,
            Preheat = below,
            Touches = [new Touch { Start = Duration.Zero, Span = touch, Side = request.Side, Tip = tip.Source }],
            End = end,
        };
        return HeatSolver.Solve(problem, _fineness, cancellation) is HeatOutcome.Completed completed
            ? new TouchCourse(completed.Run, work.Damage.Kinetics)
            : null;
    }

    private BottomHeat? HeatFromBelow(BoardHeat heat) =>
        new PreheatSetting(heat.Preheater, work.Request.Site.Board, work.Request.Bench.Room).ToBoardTemperature(heat.Board) is SettingOutcome<BottomHeat>.Ready ready
            ? ready.Source
            : null;
}
