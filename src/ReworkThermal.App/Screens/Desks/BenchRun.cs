using ReworkThermal.Core.Damage;
using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>One touch followed by the heat solver.</summary>
/// <param name="run">The run, tip on.</param>
/// <param name="posed">What was posed.</param>
/// <param name="history">What the pad has had before, or null when unknown.</param>
internal sealed class BenchRun(LiveRun run, JointSetup.Posed posed, PadHistory.Known? history) : IBenchRun
{
    private static readonly Duration _longestWait = Duration.FromMinutes(2);

    private Duration _released;
    private bool _melted;

    public BenchReading Advance(Duration elapsed)
    {
        Follow(elapsed);
        return Reading(budget: true);
    }

    public BenchRelease Release(Duration elapsed)
    {
        Follow(elapsed);
        run.Lift();
        _released = run.Elapsed;
        return new BenchRelease(Pad(), _melted);
    }

    public CoolDown? Wait()
    {
        if (history is null || _released <= Duration.Zero)
        {
            return null;
        }

        Touch touch = new() { Start = Duration.Zero, Span = _released, Side = posed.Side, Tip = posed.Tip, Jet = posed.Jet };
        return HeatSolver.Solve(posed.Problem with { Touches = [touch], End = _released + _longestWait }) is HeatOutcome.Completed { Run: { } whole }
            ? CoolDownAdvice.From(history.Model.Bond, Hotter(whole.Probes[ProbeNames.NearPad], whole.Probes[ProbeNames.FarPad], _released.Seconds))
            : null;
    }

    public BenchReading Cool(Duration sinceRelease)
    {
        Follow(_released + sinceRelease);
        return Reading(budget: false);
    }

    /// <summary>Budget of a pad after one more touch.</summary>
    internal static double BudgetAfter(PadHistory.Known history, TemperatureHistory pad, bool melted) => history.Model
        .Budget(history.Model.After(history.State, new PadExposure(pad, melted, Charge: null, HeatedRegion.Local, ExposureStart.AfterCooling)))
        .Share.Central;

    /// <summary>The hotter of the two pad interfaces, from a time on.</summary>
    internal static TemperatureHistory Hotter(TemperatureHistory near, TemperatureHistory far, double fromS)
    {
        double[] seconds = near.Seconds.ToArray();
        int first = Math.Max(0, Array.FindIndex(seconds, s => s >= fromS));
        double[] celsius = new double[seconds.Length - first];
        double[] times = new double[celsius.Length];
        for (int i = 0; i < celsius.Length; i++)
        {
            times[i] = seconds[first + i] - seconds[first];
            celsius[i] = Math.Max(near.Celsius[first + i], far.Celsius[first + i]);
        }

        return new TemperatureHistory(times, celsius);
    }

    private TemperatureHistory Pad() => Hotter(run.History(ProbeNames.NearPad), run.History(ProbeNames.FarPad), 0);

    private void Follow(Duration until)
    {
        Duration span = until - run.Elapsed;
        if (span > Duration.Zero && !run.Advance(span))
        {
            throw new InvalidOperationException("the heat solver could not take the step");
        }

        _melted |= run.LiquidShare > 0;
    }

    private BenchReading Reading(bool budget) => new(
        run.Elapsed.Seconds,
        Math.Max(run.Read(ProbeNames.NearPad).DegreesCelsius, run.Read(ProbeNames.FarPad).DegreesCelsius),
        run.Read(ProbeNames.ColdestSolder).DegreesCelsius,
        run.LiquidShare,
        run.Flows,
        budget && history is not null ? BudgetAfter(history, Pad(), _melted) : null);
}
