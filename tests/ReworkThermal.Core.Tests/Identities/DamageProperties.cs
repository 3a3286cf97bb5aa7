using FsCheck.Xunit;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>Laws that every history of a pad obeys, for every gauge and both ends of its range.</summary>
[Properties(Arbitrary = [typeof(DamageExposures)], MaxTest = 200)]
public sealed class DamageProperties
{
    // Sums of a few dozen terms in double precision.
    private const double Rounding = 1e-12;

    // Histories that differ are cut into different pieces; the quadrature of each is good to about 1e-6 (laminate) and 1e-4 (copper).
    private const double Quadrature = 2e-4;

    private static readonly DamageModel[] _models =
        [DamageBench.Model("A"), DamageBench.Model("C"), DamageBench.Model("unknown", DamageBench.Land())];

    [Property]
    public bool The_budget_never_falls(PadExposure[] exposures) => _models.All(model =>
    {
        PadDamage state = model.Begin(DamageBench.Prior("sound"));
        HeatBudget before = model.Budget(state);
        foreach (PadExposure exposure in exposures)
        {
            state = model.After(state, exposure);
            HeatBudget after = model.Budget(state);
            if (!NotLess(after, before, Rounding))
            {
                return false;
            }

            before = after;
        }

        return true;
    });

    [Property]
    public bool The_order_of_touches_after_cooling_does_not_matter(PadExposure[] exposures) => _models.All(model =>
    {
        PadDamage start = model.Begin(DamageBench.Prior("touched"));
        HeatBudget forward = model.Budget(model.After(start, exposures));
        HeatBudget backward = model.Budget(model.After(start, exposures.Reverse()));
        HeatBudget turned = model.Budget(model.After(start, exposures.Skip(1).Concat(exposures.Take(1))));
        return Same(forward, backward) && Same(forward, turned);
    });

    [Property]
    public bool No_time_costs_nothing(PadExposure exposure)
    {
        TemperatureHistory instant = new([0], [exposure.Interface.PeakCelsius]);
        return _models.All(model =>
        {
            PadDamage start = model.Begin(DamageBench.Prior("sound"));
            TouchCost cost = model.CostOf(start, exposure with { Interface = instant });
            return ReferenceEquals(start, model.After(start, exposure with { Interface = instant })) && cost.AddedShare == default;
        });
    }

    [Property]
    public bool Hotter_never_costs_less(PadExposure exposure, byte raise)
    {
        double[] hotter = [.. exposure.Interface.Celsius.ToArray().Select((c, i) => c + (raise * 0.2 * (i % 2 == 0 ? 1 : 0.5)))];
        TemperatureHistory history = new(exposure.Interface.Seconds, hotter);
        PadExposure hot = exposure with { Interface = history };
        return _models.All(model => NotLess(Budget(model, hot), Budget(model, exposure), Quadrature));
    }

    [Property]
    public bool Longer_never_costs_less(PadExposure exposure, byte stretch)
    {
        double factor = 1 + (stretch / 100.0);
        TemperatureHistory history = new([.. exposure.Interface.Seconds.ToArray().Select(s => s * factor)], exposure.Interface.Celsius);
        PadExposure longer = exposure with { Interface = history };
        return _models.All(model => NotLess(Budget(model, longer), Budget(model, exposure), Quadrature));
    }

    [Property]
    public bool Splitting_a_steady_touch_costs_the_same(byte degrees, byte tenths, byte share, bool wholeBoard)
    {
        Temperature temperature = DamageBench.Celsius(150 + degrees);
        Duration whole = Duration.FromSeconds(0.1 + (tenths / 5.0));
        Duration first = whole * (0.01 + (share / 260.0));
        bool melted = temperature.DegreesCelsius >= 200;
        HeatedRegion region = wholeBoard ? HeatedRegion.WholeBoard : HeatedRegion.Local;
        MoltenContact? charge = melted ? DamageBench.Charge(DamageSolubilityFit.Mix, 0.001, 7800, 0.2, SolderMotion.Still, 200) : null;
        return _models.All(model =>
        {
            PadDamage start = model.Begin(DamageBench.Prior("sound"));
            PadDamage once = model.After(start, PadExposure.Steady(temperature, whole, melted, charge, region));
            PadDamage half = model.After(start, PadExposure.Steady(temperature, first, melted, charge, region));
            PadDamage twice = model.After(half, PadExposure.Steady(
                temperature, whole - first, melted, charge is null ? null : charge with { FreshCopper = null }, region, ExposureStart.StraightOn));
            return Same(model.Budget(once), model.Budget(twice));
        });
    }

    [Property]
    public bool Ends_enclose_the_centre(PadExposure[] exposures) => _models.All(model => DamageBench.Limits.Priors.All(prior =>
    {
        PadDamage state = model.After(model.Begin(prior), exposures);
        HeatBudget budget = model.Budget(state);
        PullCheck pull = PullChecker.Check(model, state, DamageBench.Celsius(240), []);
        return budget.Gauges.All(g => Ordered(g.Value) && Ordered(g.Share)) && Ordered(budget.Share) && Ordered(budget.Headroom)
            && Ordered(pull.CapacityN) && pull.Margins.All(m => Ordered(m.Margin));
    }));

    [Property]
    public bool The_kinetics_alone_give_the_laminate_gauge_of_a_pad_without_earlier_heat(PadExposure exposure) => _models.All(model =>
    {
        Spread alone = model.Kinetics.Share(model.Kinetics.Spent(exposure.Interface));
        return Same(alone, model.Budget(model.After(model.Begin(DamageBench.Untouched), exposure)).GaugeOrNull(GaugeKind.Laminate)!.Value);
    });

    private static HeatBudget Budget(DamageModel model, PadExposure exposure) =>
        model.Budget(model.After(model.Begin(DamageBench.Prior("sound")), exposure));

    private static bool NotLess(HeatBudget after, HeatBudget before, double slack) =>
        NotLess(after.Share, before.Share, slack)
        && after.Gauges.Zip(before.Gauges).All(p => p.First.Kind == p.Second.Kind && NotLess(p.First.Share, p.Second.Share, slack) && p.First.Band >= p.Second.Band);

    private static bool NotLess(Spread after, Spread before, double slack) =>
        after.Low >= before.Low * (1 - slack) && after.Central >= before.Central * (1 - slack) && after.High >= before.High * (1 - slack);

    private static bool Same(HeatBudget left, HeatBudget right) =>
        left.Gauges.Zip(right.Gauges).All(p => p.First.Kind == p.Second.Kind && Same(p.First.Share, p.Second.Share));

    private static bool Same(Spread left, Spread right) =>
        NotLess(left, right, Rounding) && NotLess(right, left, Rounding);

    private static bool Ordered(Spread spread) => spread.Low <= spread.Central && spread.Central <= spread.High;
}
