using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>One touch followed by the heat solver.</summary>
/// <param name="joint">The joint, tip on.</param>
/// <param name="contact">Time of its run at contact.</param>
/// <param name="setup">The touch.</param>
/// <param name="posed">The touch as a problem, and the pad before it.</param>
/// <param name="replay">Judges pads.</param>
internal sealed class BenchRun(WarmJoint joint, Duration contact, TouchSetup setup, JointSetup.Posed posed, PadReplay replay) : IBenchRun
{
    private static readonly Duration _longestWait = Duration.FromMinutes(2);

    private Duration _released;
    private bool _melted;

    public BenchReading Advance(Duration elapsed)
    {
        Follow(contact + elapsed);
        return Reading(elapsed, budget: true);
    }

    public BenchRelease Release(Duration elapsed)
    {
        Follow(contact + elapsed);
        joint.Lift();
        _released = joint.Run.Elapsed;
        return Known(Pad(), _melted);
    }

    public CoolDown? Wait() => _released > contact && joint.Ahead(liftAt: null, _released + _longestWait) is { } whole
        ? CoolDownAdvice.From(posed.Pad.Model.Bond, Hotter(whole.Probes[ProbeNames.NearPad], FarPad(whole), _released.Seconds))
        : null;

    public BenchReading Cool(Duration sinceRelease)
    {
        Follow(_released + sinceRelease);
        return Reading(Duration.Zero, budget: false);
    }

    /// <summary>Share of the budget when the tool comes off at a time, by a run ahead of the clock; null when it cannot be told.</summary>
    internal double? BudgetAt(Duration stop)
    {
        if (joint.Ahead(contact + stop, contact + stop) is not { } run)
        {
            return null;
        }

        // The solder of the touch itself counts; what was molten before contact is left out by the time.
        bool melted = Enumerable.Range(0, run.LiquidShare.Count).Any(i => run.LiquidShare[i] > 0 && run.Probes[ProbeNames.NearPad].Seconds[i] >= contact.Seconds);
        return Budget(stop, Known(Hotter(run.Probes[ProbeNames.NearPad], FarPad(run), contact.Seconds), melted));
    }

    /// <summary>The hotter of the two pad interfaces, from a time on.</summary>
    private static TemperatureHistory Hotter(TemperatureHistory near, TemperatureHistory? far, double fromS)
    {
        double[] seconds = near.Seconds.ToArray();
        int first = Math.Max(0, Array.FindIndex(seconds, s => s >= fromS - 1e-9));
        double[] celsius = new double[seconds.Length - first];
        double[] times = new double[celsius.Length];
        for (int i = 0; i < celsius.Length; i++)
        {
            times[i] = seconds[first + i] - seconds[first];
            celsius[i] = Math.Max(near.Celsius[first + i], far?.Celsius[first + i] ?? double.NegativeInfinity);
        }

        return new TemperatureHistory(times, celsius);
    }

    private static TemperatureHistory? FarPad(HeatRun run) => run.Probes.GetValueOrDefault(ProbeNames.FarPad);

    private TemperatureHistory Pad() => Hotter(
        joint.Run.History(ProbeNames.NearPad),
        joint.Run.ProbeNamesInOrder.Contains(ProbeNames.FarPad) ? joint.Run.History(ProbeNames.FarPad) : null,
        contact.Seconds);

    private BenchRelease Known(TemperatureHistory pad, bool melted) => new(pad, melted, posed.Tools.Use);

    private void Follow(Duration until)
    {
        if (!joint.Follow(until))
        {
            throw new InvalidOperationException("the heat solver could not take the step");
        }

        _melted |= joint.Run.LiquidShare > 0;
    }

    private double Budget(Duration dwell, BenchRelease release)
    {
        Exposure touch = FinishedTouch.Of(setup.Start, setup.Began.Wall, dwell, release, sawFlow: false);
        return posed.Pad.Model.Budget(replay.After(posed.Pad, new PadHeat(int.MaxValue, touch, touch.Pads[0])).After).Share.Central;
    }

    private BenchReading Reading(Duration dwell, bool budget)
    {
        LiveRun run = joint.Run;
        double near = run.Read(ProbeNames.NearPad).DegreesCelsius;
        return new BenchReading(
            (run.Elapsed - contact).Seconds,
            run.ProbeNamesInOrder.Contains(ProbeNames.FarPad) ? Math.Max(near, run.Read(ProbeNames.FarPad).DegreesCelsius) : near,
            run.Read(ProbeNames.ColdestSolder).DegreesCelsius,
            run.LiquidShare,
            run.Flows,
            budget ? Budget(dwell, Known(Pad(), _melted)) : null);
    }
}
