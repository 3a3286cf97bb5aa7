using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Planning.Uncertainty;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>Observed touches, simulated on benches that differ in the learnable inputs.</summary>
/// <param name="observations">The observations.</param>
/// <param name="properties">Density and conductivity rules.</param>
/// <param name="cancellation">Stops the runs.</param>
internal sealed class SimulatedResponse(IReadOnlyList<BenchObservation> observations, SolderProperties properties, CancellationToken cancellation) : ITouchResponse
{
    // A touch that never flows is followed this long, at least; then its time goes on with the kelvins that are missing, so that the fit
    // has a slope to follow. The number only steers the way to the solution: at the solution observed times are finite.
    private const double LeastFollowedS = 30;
    private const double FollowedOverSeen = 3;
    private const double KelvinPerLogSecond = 20;

    /// <inheritdoc/>
    public double Expected(int touch, ReadOnlySpan<double> deviations)
    {
        BenchObservation seen = observations[touch];
        BenchVariation bench = new(LearnedBench.InputsOf(seen.Bench), deviations);
        PlanRequest request = bench.Applied(seen.Bench);
        ToolSetting setting = bench.Applied(seen.Setting);
        EnthalpyCurve curve = new SolderHeat(properties).CurveOf(seen.Solder, seen.MassFactor);
        double flowC = seen.Solder.Flow.DegreesCelsius;
        return seen.Seen switch
        {
            Sighting.Flowed flowed => LogSeconds(request, curve, flowC, setting, flowed.After.Seconds),
            Sighting.FlowedWithin by => LogSeconds(request, curve, flowC, setting, by.Within.Seconds),
            Sighting.NotFlowed not => LogSeconds(request, curve, flowC, setting, not.Within.Seconds),
            Sighting.Reading reading => TouchSimulator.ReadAt(request, curve, flowC, setting, reading.Probe, reading.After, cancellation) ?? throw Unsolved(),
            _ => throw new InvalidOperationException("unknown kind of sighting"),
        };
    }

    // By eye a joint flows when it is liquid enough to move: at flow temperature, without the superheat that a plan adds for safety.
    private double LogSeconds(PlanRequest request, EnthalpyCurve curve, double flowC, ToolSetting setting, double seenS)
    {
        double followed = Math.Max(LeastFollowedS, FollowedOverSeen * seenS);
        BriefRun run = TouchSimulator.RunUntilFlow(request, curve, flowC, TemperatureDelta.Zero, setting, Duration.Zero, Duration.FromSeconds(followed), cancellation) ?? throw Unsolved();
        return run.FlowS is { } time
            ? Math.Log(Math.Max(time, 1e-3))
            : Math.Log(followed) + ((flowC - run.ColdestC) / KelvinPerLogSecond);
    }

    private static InvalidOperationException Unsolved() => new("an observed touch could not be simulated");
}
