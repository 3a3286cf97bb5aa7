using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>How long a touch may last, and how long to wait after it.</summary>
public sealed class DamageDwellTests
{
    private static readonly DwellLimit _whole = new(1, AtUnfavourableEnd: false);

    [Fact]
    public void The_longest_dwell_is_just_within_the_limit()
    {
        DamageModel model = DamageBench.Model("A");
        PadDamage start = model.Begin(DamageBench.Prior("sound"));
        SafeDwell.UpTo found = Assert.IsType<SafeDwell.UpTo>(Search(model, start, 300, _whole));
        Assert.InRange(found.After.Share.Central, 0.99, 1);
        PadExposure longer = PadExposure.Steady(DamageBench.Celsius(300), found.Longest + (2 * DwellSearch.Precision), melted: true);
        Assert.True(model.Budget(model.After(start, longer)).Share.Central > 1);
    }

    [Fact]
    public void The_unfavourable_end_allows_less_time()
    {
        DamageModel model = DamageBench.Model("C");
        PadDamage start = model.Begin(DamageBench.Untouched);
        SafeDwell.UpTo central = Assert.IsType<SafeDwell.UpTo>(Search(model, start, 350, _whole));
        SafeDwell.UpTo harsh = Assert.IsType<SafeDwell.UpTo>(Search(model, start, 350, _whole with { AtUnfavourableEnd = true }));
        Assert.True(harsh.Longest < central.Longest / 2);
    }

    [Fact]
    public void A_limit_on_one_gauge_leaves_the_others_aside()
    {
        DamageModel model = DamageBench.Model("C");
        PadDamage start = model.Begin(DamageBench.Prior("sound"));
        DwellLimit laminate = new(1, AtUnfavourableEnd: true, GaugeKind.Laminate);
        SafeDwell.UpTo found = Assert.IsType<SafeDwell.UpTo>(Search(model, start, 320, laminate));
        Assert.InRange(found.After.GaugeOrNull(GaugeKind.Laminate)!.Share.High, 0.99, 1);
        Assert.True(found.After.Share.High > 1);
        DamageModel land = DamageBench.Model("C", DamageBench.Land());
        Assert.IsType<SafeDwell.WholeRange>(Search(land, land.Begin(DamageBench.Prior("sound")), 350, laminate with { Only = GaugeKind.Barrel }));
    }

    [Fact]
    public void A_mild_touch_keeps_the_limit_over_the_whole_range() =>
        Assert.IsType<SafeDwell.WholeRange>(Search(DamageBench.Model("C"), DamageBench.Model("C").Begin(DamageBench.Prior("sound")), 200, _whole));

    [Fact]
    public void A_spent_pad_has_no_safe_dwell()
    {
        DamageModel model = DamageBench.Model("A");
        PadDamage spent = model.After(model.Begin(DamageBench.Prior("sound")), PadExposure.Steady(DamageBench.Celsius(350), Duration.FromSeconds(10), melted: true));
        SafeDwell.None none = Assert.IsType<SafeDwell.None>(Search(model, spent, 240, _whole));
        Assert.Contains("already", none.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void One_melt_too_many_leaves_no_dwell()
    {
        DamageModel model = DamageBench.Model("C");
        PadDamage start = model.Begin(DamageBench.Prior("sound"));
        SafeDwell.None none = Assert.IsType<SafeDwell.None>(Search(model, start, 240, new DwellLimit(model.Budget(start).Share.Central + 0.01, false)));
        Assert.Contains("melt", none.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pad_may_be_touched_again_when_its_bond_is_back()
    {
        BondStrength bond = DamageBench.Model("B").Bond;
        CoolDown.Wait wait = Assert.IsType<CoolDown.Wait>(CoolDownAdvice.From(bond, new TemperatureHistory([10, 20, 50], [240, 180, 60])));
        Assert.InRange(wait.Target.DegreesCelsius, 125, 150);
        Assert.InRange(bond.HotFactor(wait.Target).Low, 0.9 - 1e-9, 0.9 + 1e-9);
        Assert.Equal(10 + ((180 - wait.Target.DegreesCelsius) / 4), wait.Time.Seconds, 1e-9);
    }

    [Fact]
    public void A_pad_that_stays_hot_or_is_cool_already_is_said()
    {
        BondStrength bond = DamageBench.Model("B").Bond;
        CoolDown.NotWithin hot = Assert.IsType<CoolDown.NotWithin>(CoolDownAdvice.From(bond, new TemperatureHistory([0, 30], [240, 170])));
        Assert.Equal(170, hot.End.DegreesCelsius, 1e-9);
        Assert.IsType<CoolDown.CoolAlready>(CoolDownAdvice.From(bond, new TemperatureHistory([0, 30], [90, 60])));
    }

    private static SafeDwell Search(DamageModel model, PadDamage before, double celsius, DwellLimit limit) =>
        DwellSearch.Longest(model, before, dwell => PadExposure.Steady(DamageBench.Celsius(celsius), dwell, melted: true), Duration.FromSeconds(60), limit);
}
