using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>
/// The loss per melt, half for each melt and half by its heat. By hand, with delta 0.08, Ea 150 kJ/mol and R = 8.314463 J/molK: a melt of
/// t seconds at T counts (1 + M)/2 standard melts with M = (t / 4 s) exp[(Ea/R)(1/523.15 K - 1/T)], at most 6, and leaves 0.92 to that power.
/// </summary>
public sealed class DamageMeltSplitTests
{
    // 0.3 s at 250 °C: M = 0.075, 0.92^0.5375; 4 s: M = 1, 0.92; 10 s: M = 2.5, 0.92^1.75; 10 s at 235 °C: M = 2.5 x 0.36133 = 0.9033;
    // 4 s at 280 °C: M = 6.4902, held at 6: 0.92^3.5; what is not counted so is in the
    // laminate's sum: 0.49 x 4 s / 6874 s of class C, a factor of 0.99971.
    [Theory]
    [InlineData(250, 0.3, 0.956172)]
    [InlineData(250, 4, 0.92)]
    [InlineData(250, 10, 0.864229)]
    [InlineData(235, 10, 0.923715)]
    [InlineData(280, 4, 0.746678)]
    public void A_melt_costs_by_its_heat(double celsius, double seconds, double kept)
    {
        Assert.Equal(kept, KeptAfter("C", PadExposure.Steady(Celsius(celsius), Seconds(seconds), melted: true)), 1e-5);
    }

    [Fact]
    public void A_factory_wave_contact_costs_what_it_did()
    {
        PadExposure wave = PadExposure.Steady(Celsius(250), Seconds(4), melted: true, region: HeatedRegion.WholeBoard);
        Assert.Equal(0.92, KeptAfter("C", wave), 0.001);
    }

    [Fact]
    public void An_hour_on_a_preheater_costs_nothing()
    {
        PadExposure soak = PadExposure.Steady(Celsius(150), Duration.FromHours(1), melted: false, region: HeatedRegion.WholeBoard);
        Assert.Equal(1, KeptAfter("C", soak), 1e-3);
    }

    /// <summary>A melt in two exposures, one straight on the other, costs what it costs in one.</summary>
    [Fact]
    public void A_melt_that_goes_on_is_one_melt()
    {
        PadExposure whole = PadExposure.Steady(Celsius(260), Seconds(8), melted: true);
        PadExposure half = PadExposure.Steady(Celsius(260), Seconds(4), melted: true);
        Assert.Equal(KeptAfter("B", whole), KeptAfter("B", half, half with { Start = ExposureStart.StraightOn }), 1e-9);
    }

    /// <summary>Heat that is in the dose of a melt is not charged by the laminate's sum once more; other heat is.</summary>
    [Fact]
    public void The_same_heat_is_not_counted_twice()
    {
        DamageModel model = DamageBench.Model("A");
        PadExposure molten = PadExposure.Steady(Celsius(250), Seconds(10), melted: true);
        double sum = model.Kinetics.Spent(molten.Interface).CentralEnergy;
        Assert.Equal(Math.Pow(0.92, 1.75), KeptAfter("A", molten), 1e-9);
        Assert.Equal(1 - sum, KeptAfter("A", molten with { Melted = false }), 1e-9);
    }

    /// <summary>Nickel slows the loss of copper by its factor: linear in time while the bath is far from full.</summary>
    [Fact]
    public void Nickel_slows_the_loss_of_copper()
    {
        DamageModel model = DamageBench.Model("B");
        double Lost(bool nickel)
        {
            MoltenContact charge = DamageBench.Charge(new TabulatedSolubility([200, 300], [0.02, 0.02]), 0, 7000, null) with { HoldsNickel = nickel };
            PadDamage state = model.After(model.Begin(DamageBench.Untouched), PadExposure.Steady(Celsius(260), Seconds(10), melted: true, charge));
            return model.Budget(state).GaugeOrNull(GaugeKind.Copper)!.Value.Central;
        }

        Assert.Equal(model.Parameters.Copper.NickelFactor.Central, Lost(nickel: true) / Lost(nickel: false), 1e-6);
    }

    /// <summary>
    /// A pad of 2 mm with a hole of 1 mm has an overhang of 0.5 mm and tips over the rim of its hole: 0.5/1.5 of the force lifts its far
    /// edge. Pads of 1.05 N/mm lifted under a tip at 290 °C that pressed the edge (mailing list of the trade, 2014, seen): a bare pad hot
    /// past its glass transition does not hold 3 N on its edge with central figures.
    /// </summary>
    [Fact]
    public void A_tip_on_the_edge_lifts_a_hot_pad_that_has_no_barrel()
    {
        DamageModel hole = DamageBench.Model("A");
        Assert.Equal(1.0 / 3, PullChecker.LiftingShare(hole.Pad), 1e-9);
        DamageModel bare = new(hole.Laminate, hole.Parameters, new PadGeometry.Surface(Length.FromMillimeters(2), hole.Pad.Copper));
        EdgePress hot = PullChecker.Check(bare, bare.Begin(DamageBench.Untouched), Celsius(290), []).PressedEdge;
        EdgePress cold = PullChecker.Check(hole, hole.Begin(DamageBench.Untouched), Celsius(25), []).PressedEdge;

        Assert.True(hot.Margin.Central < 1 && hot.Outcome != PullOutcome.Holds);
        Assert.Equal(PullOutcome.Holds, cold.Outcome);
    }

    private static double KeptAfter(string laminate, params PadExposure[] exposures)
    {
        DamageModel model = DamageBench.Model(laminate);
        PadDamage state = model.After(model.Begin(DamageBench.Untouched), exposures);
        return 1 - model.Budget(state).GaugeOrNull(GaugeKind.Adhesion)!.Value.Central;
    }
}
