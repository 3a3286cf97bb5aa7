using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>
/// An iron that hot air helps, on an invented joint that no iron alone melts through.
/// </summary>
public class PlanAssistTests(ITestOutputHelper output)
{
    private const string LeadFree = "Sn96.5Ag3Cu0.5";

    private static readonly HotAir _air = PlanDemo.Request.Bench.Air[0];

    /// <summary>Common practice, no source: where the iron alone does not get a joint on planes through, hot air is held on it first.</summary>
    [Fact]
    public void Air_and_iron_together_do_what_neither_does_alone()
    {
        Assert.IsType<PlanOutcome.NoPlan>(PlanDemo.Search(PlanDemo.Assisted with { Bench = PlanDemo.Assisted.Bench with { Air = [] } }));
        IReadOnlyList<Plan> plans = PlanDemo.PlannedAssisted.Plans;
        Assert.All(plans, p => Assert.NotNull(p.Refit.Setting.Assist));
        foreach (Plan plan in plans)
        {
            output.WriteLine(FormattableString.Invariant($"{plan.Kind}: {plan.Alloy?.Name} {plan.Added.Milligrams:0.0} mg, {plan.First.Setting.OnTheJoint}, flows {plan.First.TimeToFlow.Seconds:0.0} s; refit {plan.Refit.Setting.OnTheJoint}; laminate {plan.LaminateShare.Central:P2}"));
        }
    }

    [Fact]
    public void Lead_and_touch_keep_every_limit()
    {
        PlanLimits limits = PlanDemo.Assisted.Limits;
        Assert.All(PlanDemo.PlannedAssisted.Plans.SelectMany(p => new[] { p.First, p.Refit }), touch =>
        {
            Assert.True(touch.Dwell <= touch.Stop && touch.Stop <= (touch.Setting.Air is null ? limits.MostDwell : limits.MostAirTime).Value);
            Assert.True(touch.Setting.Lead + touch.Stop <= limits.MostAirTime.Value);
            Assert.True(touch.PadPeak <= limits.MostPadTemperature.Value);
            Assert.True(touch.Setting.Assist is null || touch.Setting.Lead.Equals(limits.AirLead.Value, Duration.FromMilliseconds(1)));
        });
    }

    [Fact]
    public void The_heat_of_the_lead_is_counted_in_the_plan()
    {
        Plan plan = PlanDemo.PlannedAssisted.Plans[0];
        TemperatureHistory pad = plan.Exposures[^1].Interface;
        Assert.True(pad.Seconds[^1] - pad.Seconds[0] >= (plan.Refit.Setting.Lead + plan.Refit.Dwell).Seconds);
    }

    [Fact]
    public void An_iron_is_never_slower_with_air_and_a_longer_lead_is_never_slower()
    {
        Workload work = Workload.Of(PlanDemo.Assisted, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        TouchSimulator simulator = new(work);
        EnthalpyCurve curve = new SolderHeat(Shelf.Alloys.Properties).CurveOf(PlanDemo.Melting("Sn63Pb37"));
        ToolSetting alone = new(PlanDemo.Assisted.Bench.Irons[0], Temperature.FromDegreesCelsius(340), null);
        double[] coldest =
        [
            ColdestAt5(alone),
            .. new double[] { 0, 5, 20 }.Select(lead => ColdestAt5(alone with { Assist = new AirAssist(_air, Temperature.FromDegreesCelsius(350), Duration.FromSeconds(lead)) })),
        ];
        output.WriteLine(string.Join(", ", coldest.Select(c => FormattableString.Invariant($"{c:0.0}"))));
        for (int i = 1; i < coldest.Length; i++)
        {
            Assert.True(coldest[i] > coldest[i - 1]);
        }

        double ColdestAt5(ToolSetting setting) =>
            simulator.Run(curve, 183, setting, Duration.FromSeconds(5), Duration.FromSeconds(5), RunPurpose.Plan, CancellationToken.None)!.ColdestAt(5);
    }

    [Fact]
    public void The_quick_look_of_the_sampling_agrees_with_the_planned_run()
    {
        Plan plan = PlanDemo.PlannedAssisted.Plans[0];
        Workload work = Workload.Of(PlanDemo.Assisted, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        EnthalpyCurve curve = new SolderHeat(Shelf.Alloys.Properties).CurveOf(PlanDemo.Melting(LeadFree));
        BriefRun quick = TouchSimulator.RunUntilFlow(
            PlanDemo.Assisted,
            curve,
            PlanDemo.Melting(LeadFree).Flow.DegreesCelsius,
            work.Limits.Superheat.Value,
            plan.Refit.Setting,
            work.Limits.WorkingTime.Value,
            work.Limits.MostDwell.Value,
            CancellationToken.None)!.Value;
        output.WriteLine(FormattableString.Invariant($"{quick.FlowS:0.000} s, {plan.Refit.TimeToFlow.Seconds:0.000} s"));

        // Both choose their steps by an error of a few tenths of a kelvin, and the solder warms by some tens of kelvins in a second.
        Assert.Equal(plan.Refit.TimeToFlow.Seconds, quick.FlowS!.Value, 0.02);
    }

    /// <summary>Of the grid, which takes every second step of the iron, what is left out without a run would not have held the limits: it is run here.</summary>
    [Fact]
    public void No_setting_that_would_do_is_left_out()
    {
        PlanRequest request = PlanDemo.Request with { Bench = PlanDemo.Request.Bench with { Irons = [PlanDemo.Request.Bench.Irons[1]], Air = [_air] }, Limits = PlanDemo.Request.Limits with { AirLead = Lead(10) } };
        Workload work = Workload.Of(request, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        SolderHeat heat = new(Shelf.Alloys.Properties);
        TouchSimulator simulator = new(work);
        StationBuilder builder = new(work, simulator, heat);
        MeltingBehaviour own = PlanDemo.Melting(LeadFree);
        MeltingBehaviour refill = PlanDemo.Melting("Sn63Pb37");
        const double LowestC = 150;
        IReadOnlyList<Station> single = builder.Build(closely: false, own, refill, null, CancellationToken.None);
        AssistedStations assisted = builder.BuildAssisted(single, own, refill, (LowestC, own.Flow.DegreesCelsius), null, CancellationToken.None);
        EnthalpyCurve bare = heat.CurveWithoutMelting(own);
        List<ToolSetting> all =
        [
            .. single.Where(s => s.Setting.Iron is not null && ((int)Math.Round(400 - s.Setting.Set.DegreesCelsius) % 40) == 0)
                .SelectMany(s => new[] { 300.0, 350, 400, 450 }.Select(set => s.Setting with { Assist = new AirAssist(_air, Temperature.FromDegreesCelsius(set), Duration.FromSeconds(10)) })),
        ];
        HashSet<ToolSetting> run = [.. assisted.Stations.Select(s => s.Setting)];
        int left = 0;
        foreach (ToolSetting setting in all.Where((s, i) => !run.Contains(s) && i % 2 == 0))
        {
            left++;
            Duration longest = work.LongestWith(setting);
            TouchCourse course = simulator.Run(bare, LowestC, setting, longest, longest, RunPurpose.Screening, CancellationToken.None)!;
            Assert.Null(TouchJudge.Judge(course, setting, work.NeededC(LowestC), work.Limits, longest, work.LaminateAllowed));
        }

        output.WriteLine($"{run.Count} run, {left} of those left out examined");
        Assert.True(run.Count > 5 && left > 5);
    }

    [Fact]
    public void A_part_that_the_air_alone_would_cook_is_named_with_the_time_it_leaves()
    {
        RuledOut reason = Assert.Single(PlanDemo.Planned.RuledOut, r => r.What == "iron and hot air");
        Assert.Contains("must stop after", reason.Why, StringComparison.Ordinal);
        Assert.Contains("C12", reason.Why, StringComparison.Ordinal);
    }

    private static Limit<Duration> Lead(double seconds) => PlanDemo.Request.Limits.AirLead with { Value = Duration.FromSeconds(seconds) };
}
