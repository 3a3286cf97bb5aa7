using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.Core.Tests.Behaviour.Jobs;

/// <summary>How a pad's ledger becomes a heat budget.</summary>
public sealed class PadReplayTests
{
    [Fact]
    public void A_measured_series_is_used_as_it_is()
    {
        Exposure touch = JobBenches.Steady(245, 8, 0);
        PadAccount account = JobBenches.Judge(JobBenches.Ledger(touch));
        Assert.Same(touch.Pads[0].Series!.History, account.Steps[0].Interface);
        Assert.False(account.Steps[0].Simulated);
        Assert.True(account.Steps[0].Melted);
        Assert.Equal(245, account.Damage.PeakCelsius);
    }

    [Fact]
    public void The_laminate_sum_is_that_of_the_damage_model_fed_by_hand()
    {
        PadAccount account = JobBenches.Judge(JobBenches.Ledger(JobBenches.Steady(245, 8, 0), JobBenches.Steady(260, 3, 5)));
        PadDamage byHand = account.Model.Begin(account.Prior);
        byHand = account.Model.After(byHand, PadExposure.Steady(Temperature.FromDegreesCelsius(245), Duration.FromSeconds(8), melted: true));
        byHand = account.Model.After(byHand, PadExposure.Steady(Temperature.FromDegreesCelsius(260), Duration.FromSeconds(3), melted: true));
        HeatBudget expected = account.Model.Budget(byHand);
        foreach (GaugeKind kind in Enum.GetValues<GaugeKind>().Where(k => k != GaugeKind.Copper))
        {
            Assert.Equal(expected.GaugeOrNull(kind)!.Share, account.Budget.GaugeOrNull(kind)!.Share);
        }

        Assert.True(account.Budget.GaugeOrNull(GaugeKind.Copper)!.Share.Central > expected.GaugeOrNull(GaugeKind.Copper)!.Share.Central);
    }

    [Fact]
    public void A_touch_below_the_flow_temperature_is_no_melt()
    {
        PadAccount account = JobBenches.Judge(JobBenches.Ledger(JobBenches.Steady(200, 20, 0)));
        Assert.False(account.Steps[0].Melted);
        Assert.Equal(0, account.Damage.LoggedMelts);
    }

    [Fact]
    public void A_voided_touch_no_longer_counts()
    {
        Exposure[] touches = [JobBenches.Steady(245, 8, 0), JobBenches.Steady(300, 20, 5)];
        PadAccount with = JobBenches.Judge(JobBenches.State(touches).Pads[JobBenches.Pad]);
        PadAccount without = JobBenches.Judge(JobBenches.State(touches, voided: 4).Pads[JobBenches.Pad]);
        PadAccount alone = JobBenches.Judge(JobBenches.State(touches[..1]).Pads[JobBenches.Pad]);
        Assert.True(without.Budget.Share.Central < with.Budget.Share.Central);
        Assert.Equal(alone.Budget.Share, without.Budget.Share);
    }

    [Fact]
    public void A_touch_without_temperatures_is_simulated_when_it_is_judged()
    {
        Exposure touch = JobBenches.Steady(0, 4, 0) with { Pads = [new HeatedPad(JobBenches.Pad, true, null, null)] };
        PadAccount account = JobBenches.Judge(JobBenches.Ledger(touch));
        Assert.Equal(0, account.NotCounted);
        Assert.True(account.Steps[0].Simulated);
        Assert.InRange(account.Damage.PeakCelsius!.Value, 100, 350);
        Assert.Contains(account.Notes, n => n.Contains("simulated now", StringComparison.Ordinal));
    }

    [Fact]
    public void A_touch_that_cannot_be_simulated_is_named_and_not_counted()
    {
        Exposure touch = JobBenches.Steady(0, 4, 0) with
        {
            Tools = [new ToolSetting.Iron("no such iron", Temperature.FromDegreesCelsius(350))],
            Pads = [new HeatedPad(JobBenches.Pad, true, true, null)],
        };
        PadAccount account = JobBenches.Judge(JobBenches.Ledger(touch));
        Assert.Equal(1, account.NotCounted);
        Assert.Contains(account.Notes, n => n.Contains("no such iron", StringComparison.Ordinal) && n.Contains("NOT counted", StringComparison.Ordinal));
    }

    [Fact]
    public void The_solder_follows_what_was_added_and_wicked()
    {
        SolderLedger ledger = new();
        PadAccount mixed = ledger.Then(TouchPurpose.Mix, new AddedSolder("Bi58Sn42", Mass.FromMilligrams(10)));
        double full = mixed.Contents.Amount.Milligrams - 10;
        double bismuth = 0.58 * 10;
        Assert.Equal(bismuth / (full + 10), mixed.Contents.Fractions[Element.Bi], 1e-9);

        PadAccount wicked = ledger.Then(TouchPurpose.Wick, null);
        Assert.Equal(0.2 * (full + 10), wicked.Contents.Amount.Milligrams, 1e-6);
        Assert.Equal(mixed.Contents.Fractions[Element.Bi], wicked.Contents.Fractions[Element.Bi], 1e-12);

        PadAccount refilled = ledger.Then(TouchPurpose.Refill, new AddedSolder("Sn63Pb37", null));
        Assert.Equal(0.2 * bismuth / refilled.Contents.Amount.Milligrams, refilled.Contents.Fractions[Element.Bi], 1e-9);
        Assert.True(refilled.Contents.Fractions[Element.Pb] > 0.2);
    }

    [Fact]
    public void Fresh_solder_takes_another_bite_of_copper()
    {
        double Copper(params Exposure[] touches) => JobBenches.Judge(JobBenches.Ledger(touches)).Budget.GaugeOrNull(GaugeKind.Copper)!.Share.Central;
        Exposure hot = JobBenches.Steady(265, 60, 0);
        double first = Copper(hot);
        double again = Copper(hot, JobBenches.Steady(265, 60, 5));
        double fresh = Copper(hot, JobBenches.Steady(265, 60, 5, TouchPurpose.Wick), JobBenches.Steady(265, 60, 10, TouchPurpose.Refill, new AddedSolder("Sn96.5Ag3Cu0.5", null)));
        Assert.True(again - first < 0.1 * (first - Copper()), "the charge was saturated");
        Assert.True(fresh - again > 0.3 * (first - Copper()));
    }

    [Fact]
    public void A_touch_of_no_time_before_the_first_melt_changes_nothing()
    {
        Exposure melt = JobBenches.Steady(265, 30, 5);
        Assert.Equal(
            JobBenches.Judge(JobBenches.Ledger(melt)).Budget.Share,
            JobBenches.Judge(JobBenches.Ledger(JobBenches.Steady(300, 0, 0), melt)).Budget.Share);
    }

    [Fact]
    public void A_bath_counts_as_hot_as_it_is_and_never_saturates()
    {
        Exposure bath = JobBenches.Steady(0, 30, 0) with
        {
            Tools = [new ToolSetting.Bath(null, Temperature.FromDegreesCelsius(265))],
            Pads = [new HeatedPad(JobBenches.Pad, true, null, null)],
        };
        PadAccount dipped = JobBenches.Judge(JobBenches.Ledger(bath));
        PadAccount closed = JobBenches.Judge(JobBenches.Ledger(JobBenches.Steady(265, 30, 0)));
        Assert.Equal(265, dipped.Damage.PeakCelsius);
        Assert.True(dipped.Budget.GaugeOrNull(GaugeKind.Copper)!.Share.Central > 4 * closed.Budget.GaugeOrNull(GaugeKind.Copper)!.Share.Central);
    }

    [Fact]
    public void Stated_earlier_heat_costs_more_the_worse_it_is()
    {
        PadLedger ledger = JobBenches.Ledger();
        double[] shares = [.. new PriorCondition?[] { null, PriorCondition.Touched, PriorCondition.Scorched }.Select(p => JobBenches.Judge(ledger with { Prior = p }).Budget.Share.Central)];
        Assert.True(shares[0] < shares[1]);
        Assert.True(JobBenches.Judge(ledger).PriorIsAssumed);
        Assert.False(JobBenches.Judge(ledger with { Prior = PriorCondition.Scorched }).PriorIsAssumed);
    }

    private sealed class SolderLedger
    {
        private readonly List<Exposure> _touches = [];

        internal PadAccount Then(TouchPurpose purpose, AddedSolder? added)
        {
            _touches.Add(JobBenches.Steady(260, 5, _touches.Count * 5, purpose, added));
            return JobBenches.Judge(JobBenches.Ledger(_touches));
        }
    }
}
