using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>What a budget says.</summary>
public sealed class DamageBudgetTests
{
    private static readonly Duration _tenSeconds = Duration.FromSeconds(10);

    [Fact]
    public void The_greatest_share_governs_and_sets_the_band()
    {
        DamageModel model = DamageBench.Model("A");
        HeatBudget budget = After(model, 350, _tenSeconds);
        Assert.Equal(GaugeKind.Laminate, budget.Governing.Kind);
        Assert.Equal(budget.Gauges.Max(g => g.Share.Central), budget.Share.Central);
        Assert.Equal(DamageBand.Stop, budget.Band);
        Assert.StartsWith("laminate governs", budget.Reason, StringComparison.Ordinal);
        Assert.Equal(1 - budget.Share.Central, budget.Headroom.Central);
    }

    [Fact]
    public void A_band_that_depends_on_the_range_is_said()
    {
        HeatBudget budget = After(DamageBench.Model("B"), 260, Duration.FromSeconds(10));
        Assert.True(budget.WorstBand > budget.Band);
        Assert.Contains("unfavourable end", budget.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_surface_pad_has_no_barrel_gauge_and_says_why()
    {
        DamageModel model = DamageBench.Model("B", DamageBench.Land());
        HeatBudget budget = model.Budget(model.Begin(DamageBench.Prior("sound")));
        Assert.Null(budget.GaugeOrNull(GaugeKind.Barrel));
        Assert.Contains(budget.Omissions, o => o.Kind == GaugeKind.Barrel);
        Assert.Equal(4, budget.Gauges.Count);
    }

    [Fact]
    public void Unknown_solder_is_said_to_leave_copper_incomplete()
    {
        HeatBudget budget = After(DamageBench.Model("B"), 240, _tenSeconds);
        Assert.Contains(budget.Omissions, o => o.Kind == GaugeKind.Copper);
    }

    [Fact]
    public void Assumed_heat_extrapolation_and_class_notes_are_said()
    {
        HeatBudget cool = After(DamageBench.Model("C"), 240, _tenSeconds);
        HeatBudget hot = After(DamageBench.Model("C"), 340, _tenSeconds);
        Assert.Contains(cool.Assumptions, a => a.Contains("two reflows and one wave contact", StringComparison.Ordinal));
        Assert.Contains(cool.Assumptions, a => a.Contains("60 min", StringComparison.Ordinal));
        Assert.DoesNotContain(cool.Assumptions, a => a.Contains("extrapolated", StringComparison.Ordinal));
        Assert.Contains(hot.Assumptions, a => a.Contains("340 °C", StringComparison.Ordinal) && a.Contains("extrapolated", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_reads_like_a_probability()
    {
        HeatBudget budget = After(DamageBench.Model("B"), 300, _tenSeconds);
        IEnumerable<string> words = [budget.Reason, .. budget.Assumptions, .. budget.Gauges.SelectMany(g => new[] { g.Reason, g.Unit }), .. budget.Omissions.Select(o => o.Reason)];
        Assert.DoesNotContain(words, w => w.Contains("probab", StringComparison.OrdinalIgnoreCase)
            || w.Contains("likel", StringComparison.OrdinalIgnoreCase) || w.Contains("chance", StringComparison.OrdinalIgnoreCase) || w.Contains("risk", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData(GaugeKind.Laminate, SupportLevel.SupportedInForm)]
    [InlineData(GaugeKind.Adhesion, SupportLevel.Judgement)]
    [InlineData(GaugeKind.Copper, SupportLevel.SupportedInForm)]
    [InlineData(GaugeKind.Barrel, SupportLevel.Judgement)]
    [InlineData(GaugeKind.Melts, SupportLevel.Supported)]
    public void Each_gauge_says_how_far_it_is_supported(GaugeKind kind, SupportLevel support) =>
        Assert.Equal(support, After(DamageBench.Model("B"), 240, _tenSeconds).GaugeOrNull(kind)!.Support);

    [Fact]
    public void Worse_assumptions_about_earlier_heat_use_more()
    {
        DamageModel model = DamageBench.Model("B");
        HeatBudget sound = model.Budget(model.Begin(DamageBench.Prior("sound")));
        HeatBudget touched = model.Budget(model.Begin(DamageBench.Prior("touched")));
        HeatBudget scorched = model.Budget(model.Begin(DamageBench.Prior("scorched")));
        Assert.Equal(3, sound.GaugeOrNull(GaugeKind.Melts)!.Value.Central);
        Assert.Equal(6, touched.GaugeOrNull(GaugeKind.Melts)!.Value.Central);
        Assert.True(sound.Share.Central < touched.Share.Central);
        Assert.True(sound.GaugeOrNull(GaugeKind.Laminate)!.Share.Central < scorched.GaugeOrNull(GaugeKind.Laminate)!.Share.Central);
    }

    [Fact]
    public void A_touch_that_goes_on_is_one_melt_and_a_new_one_is_two()
    {
        DamageModel model = DamageBench.Model("B");
        PadExposure touch = PadExposure.Steady(DamageBench.Celsius(240), _tenSeconds, melted: true, region: HeatedRegion.WholeBoard);
        PadDamage first = model.After(model.Begin(DamageBench.Prior("sound")), touch);
        PadDamage on = model.After(first, touch with { Start = ExposureStart.StraightOn });
        PadDamage anew = model.After(first, touch);
        Assert.Equal(4, on.Melts.Central);
        Assert.Equal(5, anew.Melts.Central);
        Assert.Equal(first.Central.Barrel, on.Central.Barrel);
        Assert.True(anew.Central.Barrel > on.Central.Barrel);
    }

    [Fact]
    public void Fresh_solder_takes_another_bite_and_the_same_solder_does_not()
    {
        DamageModel model = DamageBench.Model("B");
        MoltenContact charge = DamageBench.Charge(DamageSolubilityFit.LeadFree, 0.005, 7000, 0.16);
        PadExposure touch = PadExposure.Steady(DamageBench.Celsius(265), Duration.FromSeconds(120), melted: true, charge);
        PadDamage once = model.After(model.Begin(DamageBench.Untouched), touch);
        PadDamage same = model.After(once, touch with { Charge = charge with { FreshCopper = null } });
        PadDamage fresh = model.After(once, touch);
        Assert.Equal(1, same.Central.Copper.LostM / once.Central.Copper.LostM, 1e-5);
        Assert.Equal(2, fresh.Central.Copper.LostM / once.Central.Copper.LostM, 1e-9);
    }

    [Fact]
    public void A_first_charge_without_its_copper_is_refused()
    {
        DamageModel model = DamageBench.Model("B");
        MoltenContact charge = DamageBench.Charge(DamageSolubilityFit.LeadFree, 0.005, 7000, 0.16) with { FreshCopper = null };
        PadExposure touch = PadExposure.Steady(DamageBench.Celsius(265), _tenSeconds, melted: true, charge);
        Assert.Throws<ArgumentException>(() => model.After(model.Begin(DamageBench.Untouched), touch));
    }

    [Fact]
    public void A_wall_no_thicker_than_the_least_is_spent_from_the_start()
    {
        DamageModel model = DamageBench.Model("B", DamageBench.Hole(10));
        HeatBudget budget = model.Budget(model.Begin(DamageBench.Untouched));
        Assert.Equal(GaugeKind.Copper, budget.Governing.Kind);
        Assert.Equal(DamageBand.Stop, budget.Band);
    }

    [Fact]
    public void One_hole_heated_alone_strains_its_barrel_less_than_the_whole_board()
    {
        BarrelFatigue barrel = DamageBench.Model("B").Barrel!;
        Assert.Equal(0.3, barrel.Used(245, HeatedRegion.Local).Central / barrel.Used(245, HeatedRegion.WholeBoard).Central, 1e-12);
        Assert.Equal(default, barrel.Used(150, HeatedRegion.WholeBoard));
    }

    private static HeatBudget After(DamageModel model, double celsius, Duration time) => model.Budget(model.After(
        model.Begin(DamageBench.Prior("sound")), PadExposure.Steady(DamageBench.Celsius(celsius), time, melted: true)));
}
