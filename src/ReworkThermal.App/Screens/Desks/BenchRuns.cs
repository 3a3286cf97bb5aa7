using ReworkThermal.App.Commands;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Live simulations by the heat solver; the board keeps its heat from one touch to the next.</summary>
/// <param name="workshop">What pads are judged with; used on the thread of the touch only.</param>
internal sealed class BenchRuns(JobWorkshop workshop) : IBenchRuns
{
    private readonly JointPoser _poser = new(workshop);
    private readonly PadReplay _replay = new(workshop.Bench);
    private WarmJoint? _joint;

    public BenchStart Begin(TouchSetup setup)
    {
        JointSetup setUp = _poser.Pose(setup);
        if (setUp is not JointSetup.Posed posed)
        {
            return new BenchStart.ClockOnly(((JointSetup.Missing)setUp).Reason);
        }

        _joint = WarmJoint.Begin(setup, posed, _joint);
        if (_joint is null)
        {
            return new BenchStart.ClockOnly(ScreenBudgetWords.NotSettled);
        }

        bool warm = _joint.IsWarm;
        UnitsNet.Duration contact = _joint.Touch();
        double startC = _joint.Run.Read(Core.HeatFlow.Readings.ProbeNames.NearPad).DegreesCelsius;
        BenchRun run = new(_joint, contact, setup, posed, _replay);
        return new BenchStart.Ready(
            run,
            new BenchForecast(
                posed.Problem.FlowTemperature.DegreesCelsius,
                workshop.Workshop.Planning.Limits.MostPadTemperature.Value.DegreesCelsius,
                posed.Pad.Budget.Share.Central,
                setup.Stop is { } stop ? run.BudgetAt(stop) : null,
                warm ? startC : null,
                Fresh: !warm && Math.Abs(posed.Pad.Fill - 1) < FullEnough && posed.Pad.Steps.Count == 0,
                posed.Tools.Assumed));
    }

    // Rounding of masses only: a joint that was wicked or mixed into is not full of what it came with.
    private const double FullEnough = 0.01;
}
