using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>The planner on the shipped demo request; the request is invented, the expectations are a technician's.</summary>
public class PlanSearchTests(ITestOutputHelper output)
{
    [Fact]
    public void The_demo_has_at_least_three_plans_that_differ()
    {
        IReadOnlyList<Plan> plans = PlanDemo.Planned.Plans;
        Assert.True(plans.Count >= 3);
        Assert.Equal(plans.Count, plans.Select(p => (p.Alloy?.Name, p.Added.Kilograms, p.First.Setting)).Distinct().Count());
        Assert.Equal(PlanKind.SmallestBudget, plans[0].Kind);
        Assert.All(plans, p => Assert.True(plans[0].BudgetUsed.Central <= p.BudgetUsed.Central + 1e-9));
    }

    [Fact]
    public void Every_plan_holds_every_limit()
    {
        PlanLimits limits = PlanDemo.Request.Limits;
        foreach (Plan plan in PlanDemo.Planned.Plans)
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
        Assert.DoesNotContain(PlanDemo.Planned.Plans, p => p.Alloy is null && p.First.Setting.Preheat is null);
        RuledOut reason = Assert.Single(PlanDemo.Planned.RuledOut, r => r.What == "nothing added, no preheat");
        Assert.Contains("the coldest solder reaches at best", reason.Why, StringComparison.Ordinal);
        Assert.Contains("K more", reason.Why, StringComparison.Ordinal);
    }

    /// <summary>Common practice, no source: with a dilution alloy and preheat it clears, at a cooler iron than without the alloy.</summary>
    [Fact]
    public void With_dilution_and_preheat_it_flows_with_a_cooler_iron_and_pad()
    {
        JointSite site = PlanDemo.Request.Site;
        PlanOutcome alone = PlanDemo.Search(PlanDemo.Request with
        {
            Site = new JointSite(site.Board, site.Joint, site.Connector, []),
            Bench = PlanDemo.Request.Bench with { Air = [], Removal = PlanDemo.Workshop.Removals.Single(r => r.Name == "pump") },
        });
        IReadOnlyList<Plan> plans = Assert.IsType<PlanOutcome.Planned>(alone).Plans;
        Plan diluted = plans.First(p => p.Alloy is not null && p.First.Setting.Preheat is not null);
        Plan bare = plans.First(p => p.Alloy is null);
        Assert.True(diluted.First.PadPeak < bare.First.PadPeak);
        Assert.True(diluted.Melting.Flow < bare.Melting.Flow - TemperatureDelta.FromKelvins(10));
    }

    [Fact]
    public void Lead_free_only_brings_no_lead_and_says_what_it_left_out()
    {
        PlanRequest request = PlanDemo.Request with { Limits = PlanDemo.Request.Limits with { LeadFreeOnly = true } };
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(request));
        Assert.All(planned.Plans, p => Assert.True(p.Alloy is null or { IsLeadFree: true }));
        Assert.Contains(planned.RuledOut, r => r.What == "Bi52Pb32Sn16" && r.Why.Contains("lead-free only", StringComparison.Ordinal));
    }

    [Fact]
    public void An_impossible_request_says_which_limit_blocks_and_by_how_much()
    {
        PlanLimits tight = PlanDemo.Request.Limits with { MostDwell = PlanDemo.Request.Limits.MostDwell with { Value = Duration.FromSeconds(2.2) } };
        PlanRequest request = PlanDemo.Request with { Limits = tight, Bench = PlanDemo.Request.Bench with { Preheaters = [] } };
        PlanOutcome.NoPlan none = Assert.IsType<PlanOutcome.NoPlan>(PlanDemo.Search(request));
        Assert.Contains("the coldest solder reaches at best", none.Reason, StringComparison.Ordinal);
        Assert.Contains("K more", none.Reason, StringComparison.Ordinal);
    }

    /// <summary>A remedy is named when it was tried: the demo has a plan that adds nothing over a heated board exactly when preheat is named.</summary>
    [Fact]
    public void Preheat_is_named_as_a_remedy_only_where_a_plan_over_a_heated_board_holds()
    {
        RuledOut cold = Assert.Single(PlanDemo.Planned.RuledOut, r => r.What == "nothing added, no preheat");
        bool holds = PlanDemo.Planned.Plans.Any(p => p.Alloy is null && p.First.Setting.Preheat is not null);
        Assert.Equal(holds, cold.Why.Contains("preheat the board by", StringComparison.Ordinal));
        Assert.Matches(@"add \d+\.\d mg of ", cold.Why);
    }

    /// <summary>The remedy is tried: a board hotter by what is said flows where the first one did not. No part is near, and the pad may get hotter than in the demo.</summary>
    [Fact]
    public void A_refusal_says_how_much_more_preheat_would_do()
    {
        PlanLimits limits = PlanDemo.Request.Limits with { MostPadTemperature = PlanDemo.Request.Limits.MostPadTemperature with { Value = Temperature.FromDegreesCelsius(350) } };
        PlanRequest request = PlanDemo.Request with { Limits = limits, Site = Alone(PlanDemo.Request.Site) };
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(request with { Bench = request.Bench with { Air = [] } }));
        RuledOut cold = Assert.Single(planned.RuledOut, r => r.What == "nothing added, no preheat");
        System.Text.RegularExpressions.Match remedy = System.Text.RegularExpressions.Regex.Match(
            cold.Why, @"preheat the board by about (?<more>\d+) K more, with the (?<tool>[a-z ]+) at (?<set>\d+) °C, or add \d+\.\d mg of ");
        Assert.True(remedy.Success, cold.Why);
        double hotter = Number(remedy.Groups["more"].Value);
        Iron iron = PlanDemo.Request.Bench.Irons.Single(i => i.Name.StartsWith(remedy.Groups["tool"].Value, StringComparison.Ordinal));
        Workload work = Workload.Of(PlanDemo.Request, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        SolderHeat heat = new(Shelf.Alloys.Properties);
        TouchCourse course = new StationBuilder(work, new TouchSimulator(work), heat).Run(
            new ToolSetting(iron, Temperature.FromDegreesCelsius(Number(remedy.Groups["set"].Value)), new BoardHeat(PlanDemo.Request.Bench.Preheaters[0], Temperature.FromDegreesCelsius(23 + hotter))),
            heat.CurveWithoutMelting(PlanDemo.Melting("Sn96.5Ag3Cu0.5")),
            heat.CurveOf(PlanDemo.Melting("Sn63Pb37")),
            183,
            CancellationToken.None)!.Bare;

        Assert.True(course.ColdestAt(8) >= work.NeededC(PlanDemo.Melting("Sn96.5Ag3Cu0.5").Flow.DegreesCelsius) - 1);
    }

    /// <summary>With nothing beside the joint, hot air before the iron does without preheat what neither tool does alone: the answer must not deny it.</summary>
    [Fact]
    public void A_way_that_works_is_shown_or_at_least_not_said_to_fail()
    {
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(PlanDemo.Request with { Site = Alone(PlanDemo.Request.Site) }));
        bool shown = planned.Plans.Any(p => p.Alloy is null && p.First.Setting.Preheat is null);
        IEnumerable<RuledOut> denied = planned.RuledOut.Where(r => r.What == "nothing added, no preheat");
        Assert.All(denied, r => Assert.StartsWith("would work (", r.Why, StringComparison.Ordinal));
        Assert.Equal(shown ? 0 : 1, denied.Count());
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static JointSite Alone(JointSite site) => new(site.Board, site.Joint, site.Connector, []);

    [Fact]
    public void A_part_that_bears_little_heat_rules_out_the_plans_that_would_cook_it()
    {
        JointSite site = PlanDemo.Request.Site;
        Neighbour part = site.Neighbours.First(n => n.MostTemperature is not null);
        Neighbour tender = part with { MostTemperature = part.MostTemperature! with { Central = Temperature.FromDegreesCelsius(105), Low = Temperature.FromDegreesCelsius(100) } };
        PlanRequest request = PlanDemo.Request with { Site = new JointSite(site.Board, site.Joint, site.Connector, [tender]) };
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(request));
        Assert.All(planned.Plans, p =>
        {
            Assert.True(p.First.Setting.Preheat is null || p.First.Board < Temperature.FromDegreesCelsius(105));
            Assert.DoesNotContain(p.Neighbours, n => n.IsOver);
        });
        Assert.Contains(planned.RuledOut, r => r.What == "hot air alone" && r.Why.Contains(tender.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void The_plastic_of_the_part_itself_is_watched_like_any_neighbour()
    {
        JointSite site = PlanDemo.Request.Site;
        Connector connector = site.Connector!;
        Connector wax = connector with { PlasticLimit = connector.PlasticLimit! with { Low = Temperature.FromDegreesCelsius(24), Central = Temperature.FromDegreesCelsius(25) } };
        PlanRequest request = PlanDemo.Request with { Site = new JointSite(site.Board, site.Joint, wax, site.Neighbours), Bench = PlanDemo.Request.Bench with { Dilutions = [Shelf.Dilution("Sn63Pb37")] } };
        Assert.All(Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(request)).Plans, p => Assert.Contains(p.Neighbours, n => n.Part == wax.Name && n is { Kind: NeighbourStrainKind.Temperature, IsOver: true }));
        Assert.DoesNotContain(PlanDemo.Planned.Plans.SelectMany(p => p.Neighbours), n => n.Part == connector.Name);
    }

    [Fact]
    public void A_search_can_be_stopped()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => PlanDemo.Search(PlanDemo.Request, stop.Token));
    }
}
