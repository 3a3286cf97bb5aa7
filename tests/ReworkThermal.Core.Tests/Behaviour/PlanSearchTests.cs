using ReworkThermal.Core.Planning;
using ReworkThermal.Data;
using ReworkThermal.Data.Requests;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>The planner on the shipped demo request; the request is invented, the expectations are a technician's.</summary>
public class PlanSearchTests(ITestOutputHelper output)
{
    private static readonly Lazy<Workshop> _workshop = new(() => Workshop.Load(DataRoot.BesideProgram));
    private static readonly Lazy<PlanRequest> _demo = new(() =>
        PlanRequestFile.Read(Path.Combine(DataRoot.BesideProgram.Profiles, "requests", "pump-controller-jack.toml"), _workshop.Value));

    private static readonly Lazy<PlanOutcome.Planned> _planned = new(() => Assert.IsType<PlanOutcome.Planned>(Search(_demo.Value)));

    [Fact]
    public void The_demo_has_at_least_three_plans_that_differ()
    {
        IReadOnlyList<Plan> plans = _planned.Value.Plans;
        Assert.True(plans.Count >= 3);
        Assert.Equal(plans.Count, plans.Select(p => (p.Alloy?.Name, p.Added.Kilograms, p.First.Setting)).Distinct().Count());
        Assert.Equal(PlanKind.SmallestBudget, plans[0].Kind);
        Assert.All(plans, p => Assert.True(plans[0].BudgetUsed.Central <= p.BudgetUsed.Central + 1e-9));
    }

    [Fact]
    public void Every_plan_holds_every_limit()
    {
        PlanLimits limits = _demo.Value.Limits;
        foreach (Plan plan in _planned.Value.Plans)
        {
            output.WriteLine(FormattableString.Invariant($"{plan.Kind}: {plan.Alloy?.Name} {plan.Added.Milligrams:0.0} mg, {plan.First.Setting.Set.DegreesCelsius:0} °C, board {plan.First.Board.DegreesCelsius:0} °C, {plan.Passes} passes, laminate {plan.LaminateShare.Central:P2}"));
            Assert.All([plan.First, plan.Refit], touch =>
            {
                Assert.True(touch.TimeToFlow < touch.Dwell && touch.Dwell <= touch.Stop);
                Assert.True(touch.Stop <= limits.MostDwell.Value);
                Assert.True(touch.PadPeak <= limits.MostPadTemperature.Value);
                Assert.True(touch.Setting.Set <= limits.MostIronSetting.Value);
                Assert.True(touch.Setting.Preheat is null || touch.Setting.Preheat.Board <= limits.MostPreheat.Value);
            });
            Assert.Equal(plan.First.Setting.Preheat, plan.Refit.Setting.Preheat);
            Assert.True(plan.Passes <= limits.MostPasses.Value);
            Assert.True(plan.Share <= limits.MostAddedShare.Value);
            Assert.True(plan.LaminateShare.Central <= limits.MostBudgetShare.Value.DecimalFractions);
            Assert.True(plan.Final.IsClean);
        }
    }

    /// <summary>Common practice, no source: a lead-free barrel on two planes does not clear without preheat at a sane setting.</summary>
    [Fact]
    public void Lead_free_on_two_planes_does_not_flow_through_without_preheat_and_the_answer_says_so()
    {
        Assert.DoesNotContain(_planned.Value.Plans, p => p.Alloy is null && p.First.Setting.Preheat is null);
        RuledOut reason = Assert.Single(_planned.Value.RuledOut, r => r.What == "nothing added, no preheat");
        Assert.Contains("the coldest solder reaches at best", reason.Why, StringComparison.Ordinal);
        Assert.Contains("K more", reason.Why, StringComparison.Ordinal);
    }

    /// <summary>Common practice, no source: with a dilution alloy and preheat it clears, at a cooler iron than without the alloy.</summary>
    [Fact]
    public void With_dilution_and_preheat_it_flows_with_a_cooler_iron_and_pad()
    {
        Plan diluted = _planned.Value.Plans.First(p => p.Alloy is not null && p.First.Setting.Preheat is not null);
        Plan bare = _planned.Value.Plans.First(p => p.Alloy is null);
        Assert.True(diluted.First.PadPeak < bare.First.PadPeak);
        Assert.True(diluted.Melting.Flow < bare.Melting.Flow - TemperatureDelta.FromKelvins(10));
    }

    [Fact]
    public void Lead_free_only_brings_no_lead_and_says_what_it_left_out()
    {
        PlanRequest request = _demo.Value with { Limits = _demo.Value.Limits with { LeadFreeOnly = true } };
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(Search(request));
        Assert.All(planned.Plans, p => Assert.True(p.Alloy is null or { IsLeadFree: true }));
        Assert.Contains(planned.RuledOut, r => r.What == "Bi52Pb32Sn16" && r.Why.Contains("lead-free only", StringComparison.Ordinal));
    }

    [Fact]
    public void An_impossible_request_says_which_limit_blocks_and_by_how_much()
    {
        PlanLimits tight = _demo.Value.Limits with { MostDwell = _demo.Value.Limits.MostDwell with { Value = Duration.FromSeconds(2.2) } };
        PlanRequest request = _demo.Value with { Limits = tight, Bench = _demo.Value.Bench with { Preheaters = [] } };
        PlanOutcome.NoPlan none = Assert.IsType<PlanOutcome.NoPlan>(Search(request));
        Assert.Contains("the coldest solder reaches at best", none.Reason, StringComparison.Ordinal);
        Assert.Contains("K more", none.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_can_be_stopped()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Search(_demo.Value, stop.Token));
    }

    private static PlanOutcome Search(PlanRequest request, CancellationToken cancellation = default) =>
        new PlanSearch(Shelf.Engine, Shelf.Alloys.Properties, _workshop.Value.Limits).Search(request, null, cancellation);
}
