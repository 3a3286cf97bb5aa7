using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Pads;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>Looks ahead: what the next touch would cost a pad, how long it may last, and what the pad could hold at its end.</summary>
/// <param name="bench">Models and tools.</param>
public sealed class TouchForecasting(JobBench bench)
{
    /// <summary>Longest dwell that is considered as possibly safe.</summary>
    public static readonly Duration LongestAsked = Duration.FromSeconds(20);

    // The touch is simulated for whole seconds; a dwell in between counts as the next whole one, so the answer errs to the short side.
    private const double StepSeconds = 1;

    /// <summary>Looks at one more touch.</summary>
    /// <param name="account">The pad as it is.</param>
    /// <param name="part">Every pad of the part that shall come off, this one included.</param>
    /// <param name="use">Tools and settings.</param>
    /// <param name="dwell">Length of contact, above zero.</param>
    /// <param name="cancellation">Stops simulations.</param>
    /// <returns>The forecast, or why there is none.</returns>
    public ForecastOutcome Of(
        PadAccount account,
        IReadOnlyList<PadAccount> part,
        ToolUse use,
        Duration dwell,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(account);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(use);
        Dictionary<double, TouchSimulation> runs = [];
        if (Run(dwell) is not TouchSimulation.Completed touch)
        {
            return new ForecastOutcome.Failed(((TouchSimulation.Failed)Run(dwell)).Reason);
        }

        DwellLimit limit = LimitFor(account);
        TouchSimulation.Failed? failure = null;
        SafeDwell safe = DwellSearch.Longest(account.Model, account.Damage, Longer, LongestAsked, limit);
        if (failure is not null)
        {
            return new ForecastOutcome.Failed(failure.Reason);
        }

        TouchCost cost = account.Model.CostOf(account.Damage, ExposureOf(account, touch));
        PadDamage after = account.Model.After(account.Damage, ExposureOf(account, touch));
        Temperature padAtEnd = Temperature.FromDegreesCelsius(touch.Pad.At(dwell.Seconds));
        return new ForecastOutcome.Made(new TouchForecast(
            use.Tools,
            dwell,
            touch,
            cost,
            limit,
            safe,
            CoolDownAdvice.From(account.Model.Bond, After(touch.Pad, dwell.Seconds)),
            PullChecker.Check(account.Model, after, padAtEnd, Joints(account, part, touch, dwell))));

        TouchSimulation Run(Duration length)
        {
            if (!runs.TryGetValue(length.Seconds, out TouchSimulation? run))
            {
                run = bench.Simulate(account.Site, use, account.Contents, length, cancellation);
                runs[length.Seconds] = run;
            }

            return run;
        }

        PadExposure Longer(Duration length)
        {
            double asked = Math.Max(StepSeconds, Math.Ceiling(length.Seconds / StepSeconds) * StepSeconds);
            if (Run(Duration.FromSeconds(asked)) is TouchSimulation.Completed run)
            {
                return ExposureOf(account, run);
            }

            failure = (TouchSimulation.Failed)Run(Duration.FromSeconds(asked));
            return PadExposure.Steady(Temperature.FromDegreesCelsius(20), Duration.Zero, melted: false);
        }
    }

    /// <summary>The pull check of a part at rest.</summary>
    /// <param name="account">The pad.</param>
    /// <param name="part">Every pad of the part that shall come off.</param>
    /// <param name="now">Temperature of pads and joints.</param>
    /// <returns>The check.</returns>
    public PullCheck PullNow(PadAccount account, IReadOnlyList<PadAccount> part, Temperature now)
    {
        ArgumentNullException.ThrowIfNull(account);
        return PullChecker.Check(account.Model, account.Damage, now, [.. part.Select(p => new JointHeat(p.Ledger.Pad.Value, now, FlowOf(p)))]);
    }

    // The part comes off with all its joints together; those the tool is not on have the board's temperature, which is as much as is known of them.
    private List<JointHeat> Joints(PadAccount account, IReadOnlyList<PadAccount> part, TouchSimulation.Completed touch, Duration dwell) =>
    [
        .. part.Select(p => p.Ledger.Pad == account.Ledger.Pad
            ? new JointHeat(p.Ledger.Pad.Value, Temperature.FromDegreesCelsius(touch.ColdestSolder.At(dwell.Seconds)), touch.Flow)
            : new JointHeat(p.Ledger.Pad.Value, touch.BoardAtEnd, FlowOf(p))),
    ];

    private Temperature? FlowOf(PadAccount pad) => (bench.MeltingOf(pad.Contents.Fractions) as MeltingOutcome.Found)?.Behaviour.Flow;

    private PadExposure ExposureOf(PadAccount account, TouchSimulation.Completed touch) => new(
        touch.Pad,
        touch.Melted,
        touch.Melted ? bench.ContactOf(account.Site.Joint, account.Contents.Fractions, account.Contents.Fractions[Element.Cu], isBath: false) : null,
        HeatedRegion.Local,
        ExposureStart.AfterCooling);

    // The next band is the limit: a touch is safe as long as it leaves the pad in the band it is in, or in a low or raised one.
    private DwellLimit LimitFor(PadAccount account)
    {
        double high = bench.Limits.Parameters.Gauges.High.Central;
        return new DwellLimit(account.Budget.Share.Central < high ? Math.BitDecrement(high) : Math.BitDecrement(1.0), AtUnfavourableEnd: false);
    }

    private static TemperatureHistory After(TemperatureHistory history, double seconds)
    {
        List<double> times = [seconds];
        List<double> celsius = [history.At(seconds)];
        for (int i = 0; i < history.Seconds.Length; i++)
        {
            if (history.Seconds[i] > seconds)
            {
                times.Add(history.Seconds[i]);
                celsius.Add(history.Celsius[i]);
            }
        }

        return new TemperatureHistory([.. times], [.. celsius]);
    }
}
