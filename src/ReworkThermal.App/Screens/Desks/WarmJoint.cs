using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>
/// One joint followed by the heat solver through touches that come shortly after each other, so that it keeps its heat in between.
/// </summary>
internal sealed class WarmJoint
{
    // After a longer pause the board has evened out, and a fresh run from its mean temperature says the same for less work.
    private static readonly TimeSpan _longestPause = TimeSpan.FromSeconds(60);

    // Every look ahead goes through all touches of the run again.
    private const int MostTouches = 4;

    // Farther than this from the joint the board has one temperature some seconds after a touch; nearer lie solder and pad.
    private const double LookMillimetres = 5;

    private readonly List<Touch> _touches = [];
    private readonly TouchSetup _first;
    private readonly JointSetup.Posed _posed;
    private Touch? _running;

    private WarmJoint(TouchSetup first, JointSetup.Posed posed, LiveRun run, double leftK)
    {
        _first = first;
        _posed = posed;
        Run = run;
        LeftK = leftK;
    }

    /// <summary>The run.</summary>
    internal LiveRun Run { get; }

    /// <summary>How much warmer than at rest the board was when the run began, by the touches before it [K].</summary>
    internal double LeftK { get; }

    /// <summary>Whether a touch began on heat that an earlier one left.</summary>
    internal bool IsWarm => LeftK > 0 || _touches.Count > 0;

    /// <summary>A joint at rest, or on a board that an earlier run left warm.</summary>
    /// <param name="setup">The touch about to begin.</param>
    /// <param name="posed">The same as a problem.</param>
    /// <param name="before">The run before it, or null.</param>
    /// <returns>The joint; null when the settled state over the preheater was not found.</returns>
    internal static WarmJoint? Begin(TouchSetup setup, JointSetup.Posed posed, WarmJoint? before) =>
        before is null || before._first.Job.Id != setup.Job.Id || setup.Began.Steady < before.EndedAt ? Fresh(setup, posed, 0)
        : before.GoesOnWith(setup) && before.Reach(setup.Began.Steady) ? before
        : Fresh(setup, posed, before.LeftAt(setup.Began.Steady));

    private static WarmJoint? Fresh(TouchSetup setup, JointSetup.Posed posed, double leftK)
    {
        JointProblem problem = leftK > 0
            ? posed.Problem with { Start = Base(posed.Problem, setup) + TemperatureDelta.FromKelvins(leftK), Preheat = posed.Problem.Preheat is { } below ? below with { Settled = false } : null }
            : posed.Problem;
        return LiveRun.Start(problem, posed.Tools.Tip is { } tip ? [tip] : [], posed.Tools.Jet is { } jet ? [jet] : []) is { } run
            ? new WarmJoint(setup, posed with { Problem = problem }, run, leftK)
            : null;
    }

    /// <summary>Puts the tool on at the present time of the run.</summary>
    /// <returns>The time of the run at contact.</returns>
    internal Duration Touch()
    {
        Run.Put(_posed.Tools.Tip, _posed.Tools.Jet, _posed.Tools.Side);
        _running = new Touch { Start = Run.Elapsed, Span = Duration.FromSeconds(1), Side = _posed.Tools.Side, Tip = _posed.Tools.Tip, Jet = _posed.Tools.Jet };
        return Run.Elapsed;
    }

    /// <summary>Takes the tool off.</summary>
    internal void Lift()
    {
        Run.Lift();
        if (_running is { } running && Run.Elapsed > running.Start)
        {
            _touches.Add(running with { Span = Run.Elapsed - running.Start });
        }

        _running = null;
    }

    /// <summary>Takes the run on to a time of its own.</summary>
    /// <returns>Whether it got there.</returns>
    internal bool Follow(Duration until) => until <= Run.Elapsed || Run.Advance(until - Run.Elapsed);

    /// <summary>The run again from its beginning, with the running touch ending at a time, up to a later time; null when it cannot be solved.</summary>
    internal HeatRun? Ahead(Duration? liftAt, Duration end)
    {
        IReadOnlyList<Touch> touches = _running is { } running && liftAt is { } lift ? [.. _touches, running with { Span = lift - running.Start }] : _touches;
        return HeatSolver.Solve(_posed.Problem with { Touches = touches, End = end }) is HeatOutcome.Completed { Run: { } run } ? run : null;
    }

    private TimeSpan EndedAt => _first.Began.Steady + TimeSpan.FromSeconds(_touches.Count > 0 ? _touches[^1].End.Seconds : 0);

    private static Temperature Base(JointProblem problem, TouchSetup setup) => FinishedTouch.BoardHeld(setup.Start.Tools) ?? problem.Surroundings.Room;

    /// <summary>Whether a touch finds this very joint: same pad, same solder, same tools, soon after.</summary>
    private bool GoesOnWith(TouchSetup setup) =>
        setup.Start.Pads[0] == _first.Start.Pads[0]
        && setup.Start.Tools.SequenceEqual(_first.Start.Tools)
        && setup.Start.Side == _first.Start.Side
        && setup.Start.Added is null
        && _first.Start.Added is null
        && _first.Start.Purpose != TouchPurpose.Wick
        && setup.Bench.Texts.All(t => _first.Bench.Texts.GetValueOrDefault(t.Key) == t.Value)
        && _touches.Count is > 0 and < MostTouches
        && setup.Began.Steady - EndedAt <= _longestPause;

    private bool Reach(TimeSpan steady) => Follow(Duration.FromSeconds((steady - _first.Began.Steady).TotalSeconds));

    /// <summary>Heat that is left in the board at a time, over its temperature at rest [K]; zero when it is not worth counting.</summary>
    private double LeftAt(TimeSpan steady)
    {
        const double leastK = 1;
        const double longestS = 3600;
        if ((steady - EndedAt).TotalSeconds > longestS || !Reach(steady))
        {
            return 0;
        }

        string probe = Run.ProbeNamesInOrder.Contains(ProbeNames.Plane(LookMillimetres)) ? ProbeNames.Plane(LookMillimetres) : ProbeNames.Board;
        double left = Run.Read(probe).DegreesCelsius - Base(_posed.Problem, _first).DegreesCelsius;
        return left >= leastK ? left : 0;
    }
}
