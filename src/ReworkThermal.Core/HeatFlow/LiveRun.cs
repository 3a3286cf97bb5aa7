using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>
/// A run that follows the bench as it happens: tools are put on and lifted by hand, time advances by what the clock says. The same
/// solver as a planned run; not safe for use by several threads at once.
/// </summary>
public sealed class LiveRun
{
    private readonly JointRunner _runner;
    private readonly Dictionary<string, int> _probes = new(StringComparer.Ordinal);
    private readonly int _coldest;
    private readonly double _flowK;
    private readonly double _workableK;

    private LiveRun(JointProblem problem, JointRunner runner)
    {
        _runner = runner;
        for (int i = 0; i < runner.Probes.Count; i++)
        {
            _probes[runner.Probes[i].Name] = i;
        }

        _coldest = _probes[ProbeNames.ColdestSolder];
        _flowK = problem.FlowTemperature.Kelvins;
        _workableK = _flowK + problem.Superheat.Kelvins;
    }

    /// <summary>Time since the start.</summary>
    public Duration Elapsed => Duration.FromSeconds(_runner.Engine.TimeS);

    /// <summary>Names of the probes.</summary>
    public IReadOnlyCollection<string> ProbeNamesInOrder => _probes.Keys;

    /// <summary>Whether the coldest solder has flow temperature now: 97 % liquid.</summary>
    public bool Flows => _runner.Recorder.Latest(_coldest) >= _flowK;

    /// <summary>Whether the coldest solder has flow temperature and superheat now.</summary>
    public bool IsWorkable => _runner.Recorder.Latest(_coldest) >= _workableK;

    /// <summary>Share of the solder that is liquid now, 0 to 1.</summary>
    public double LiquidShare => _runner.Recorder.LatestLiquidShare;

    /// <summary>Unexplained heat so far over the heat that moved.</summary>
    public double BalanceError => _runner.Engine.Ledger.BalanceError;

    /// <summary>Starts a live run.</summary>
    /// <param name="problem">Joint, solder, room and preheat; its touches and its end are not used.</param>
    /// <param name="tips">Tips that may be put on.</param>
    /// <param name="jets">Jets that may be put on: the mesh is made for them.</param>
    /// <param name="settings">How fine; null for the defaults.</param>
    /// <returns>The run at time zero; null when the settled state over the preheater was not found.</returns>
    public static LiveRun? Start(JointProblem problem, IReadOnlyList<TipSource> tips, IReadOnlyList<JetSource> jets, SolverSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(tips);
        ArgumentNullException.ThrowIfNull(jets);
        JointRunner runner = new(problem with { Touches = [] }, tips, jets, settings ?? new SolverSettings());
        return runner.Begin() ? new LiveRun(problem, runner) : null;
    }

    /// <summary>Puts tools on the joint at the present time.</summary>
    /// <param name="tip">A tip of those named at the start, or null.</param>
    /// <param name="jet">A jet of those named at the start, or null.</param>
    /// <param name="side">Face they work on.</param>
    public void Put(TipSource? tip, JetSource? jet, BoardSide side) => _runner.Put(tip, jet, side);

    /// <summary>Takes all tools away at the present time; tips recover meanwhile.</summary>
    public void Lift() => _runner.Lift();

    /// <summary>Advances by a span of time.</summary>
    /// <param name="span">Time to advance, zero or more.</param>
    /// <param name="cancellation">Stops in between.</param>
    /// <returns>Whether it got there; false when the step could not be solved.</returns>
    public bool Advance(Duration span, CancellationToken cancellation = default)
    {
        if (!double.IsFinite(span.Seconds) || span.Seconds < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(span), "time only advances");
        }

        return _runner.Engine.AdvanceTo(_runner.Engine.TimeS + span.Seconds, cancellation);
    }

    /// <summary>Temperature of a probe now.</summary>
    /// <param name="probe">One of <see cref="ProbeNamesInOrder"/>.</param>
    /// <returns>The temperature.</returns>
    public Temperature Read(string probe) => Temperature.FromKelvins(_runner.Recorder.Latest(_probes[probe]));

    /// <summary>Whole history of a probe so far.</summary>
    /// <param name="probe">One of <see cref="ProbeNamesInOrder"/>.</param>
    /// <returns>The history, from time zero.</returns>
    public TemperatureHistory History(string probe) => _runner.Recorder.History(_probes[probe]);
}
