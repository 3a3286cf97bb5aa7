using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Solders;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>
/// Simulates a touch of which only the setting and the seconds are known, so that its pad has a temperature history. The run goes on
/// after the touch, because a pad that cools still ages.
/// </summary>
/// <param name="site">The joint on its board.</param>
/// <param name="heat">Turns melting behaviour into heat content.</param>
public sealed class TouchHistory(JointSite site, SolderHeat heat)
{
    /// <summary>Time simulated after the tool comes off.</summary>
    public static readonly Duration Cooling = Duration.FromSeconds(30);

    private static readonly SolverSettings _fineness = new();

    /// <summary>Simulates a touch.</summary>
    /// <param name="solder">How the solder on the joint melts.</param>
    /// <param name="massFactor">Its mass over the mass that fills the joint, above zero.</param>
    /// <param name="tools">The tools.</param>
    /// <param name="dwell">Length of contact, above zero.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The history, or why there is none.</returns>
    public TouchSimulation Simulate(MeltingBehaviour solder, double massFactor, TouchTools tools, Duration dwell, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(solder);
        ArgumentNullException.ThrowIfNull(tools);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dwell.Seconds, nameof(dwell));
        if (tools.Bath is { } bath)
        {
            return InBath(solder, tools, bath, dwell);
        }

        bool isTouched = tools.Tip is not null || tools.Jet is not null;
        JointProblem problem = new()
        {
            Site = site,
            Solder = heat.CurveOf(solder, massFactor),
            FlowTemperature = solder.Flow,
            Superheat = TemperatureDelta.Zero,
            Surroundings = tools.Room,
            Start = tools.Start,
            Preheat = tools.Preheat,
            Touches = isTouched ? [new Touch { Start = Duration.Zero, Span = dwell, Side = tools.Side, Tip = tools.Tip, Jet = tools.Jet }] : [],
            End = isTouched ? dwell + Cooling : dwell,
        };
        return HeatSolver.Solve(problem, _fineness, cancellation) switch
        {
            HeatOutcome.Completed completed => Read(completed.Run, solder, tools, dwell),
            HeatOutcome.NotConverged failed => new TouchSimulation.Failed(failed.Reason),
            HeatOutcome.Impossible impossible => new TouchSimulation.Failed(impossible.Rule),
            _ => throw new InvalidOperationException("unknown kind of heat outcome"),
        };
    }

    // A dipped joint soon has the temperature of the bath and never exceeds it: the bath itself is the upper bound that is counted.
    private static TouchSimulation.Completed InBath(MeltingBehaviour solder, TouchTools tools, Temperature bath, Duration dwell)
    {
        double celsius = bath.DegreesCelsius;
        TemperatureHistory steady = new([0, dwell.Seconds], [celsius, celsius]);
        bool melted = bath >= solder.Flow;
        return new TouchSimulation.Completed(
            steady,
            steady,
            tools.Start,
            solder.Flow,
            melted ? Duration.Zero : null,
            melted,
            [],
            tools,
            [.. tools.Notes, "In a bath the pad counts as hot as the bath from the first moment: an upper bound."]);
    }

    private static TouchSimulation.Completed Read(HeatRun run, MeltingBehaviour solder, TouchTools tools, Duration dwell)
    {
        TemperatureHistory near = run.Probes[ProbeNames.NearPad];
        double[] hotter = near.Celsius.ToArray();
        if (run.Probes.TryGetValue(ProbeNames.FarPad, out TemperatureHistory? far))
        {
            for (int i = 0; i < hotter.Length; i++)
            {
                hotter[i] = Math.Max(hotter[i], far.Celsius[i]);
            }
        }

        return new TouchSimulation.Completed(
            new TemperatureHistory(near.Seconds, hotter),
            run.Probes[ProbeNames.ColdestSolder],
            Temperature.FromDegreesCelsius(run.Probes[ProbeNames.Board].At(dwell.Seconds)),
            solder.Flow,
            run.Flow?.SecondsToFlow is { } seconds ? Duration.FromSeconds(seconds) : null,
            run.FlowedShare.Any(s => s > 0),
            [.. run.Neighbours.SelectMany(n => n.Warnings).Select(w => w + ".")],
            tools,
            tools.Notes);
    }
}
