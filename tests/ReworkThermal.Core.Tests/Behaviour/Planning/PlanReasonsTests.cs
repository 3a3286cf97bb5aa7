using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Reports;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>What a plan says about itself, on the demo request.</summary>
public class PlanReasonsTests
{
    [Fact]
    public void Every_figure_of_every_plan_has_a_rule_and_something_to_rest_on()
    {
        foreach (Plan plan in PlanDemo.Planned.Plans)
        {
            IReadOnlyList<WhyLine> lines = PlanReasons.Of(PlanDemo.Request, plan);
            Assert.All(lines, l => Assert.All([l.Step, l.Figure, l.How, l.RestsOn], t => Assert.False(string.IsNullOrWhiteSpace(t))));
            Assert.Contains(lines, l => l.RestsOn.Contains("assumption", StringComparison.Ordinal));
            Assert.Contains(lines, l => l.RestsOn.Contains("DwellInMelt2019", StringComparison.Ordinal));
            Assert.Equal(plan.After.Gauges.Count, lines.Count(l => l.Step == "heat budget") - 1);
        }
    }

    /// <summary>The neighbours of the demo joint are invented; one of them bears a heating rate that no iron keeps.</summary>
    [Fact]
    public void Neighbours_and_moisture_are_warned_of()
    {
        Assert.All(PlanDemo.Planned.Plans, p =>
        {
            Assert.Contains(p.Warnings, w => w.Contains("C31", StringComparison.Ordinal) && w.Contains("limit", StringComparison.Ordinal));
            Assert.Contains(p.Warnings, w => w.Contains("moisture", StringComparison.Ordinal));
        });
    }

    [Fact]
    public void A_calibration_changes_the_plan_and_is_named()
    {
        double[][] narrow = [[0.1, 0, 0], [0, 0.1, 0], [0, 0, 0.1]];
        PlanRequest slow = PlanDemo.Request with { Calibration = new BenchCalibration("six-layer-controller", [-1.5, 1.5, -1.5], narrow, 3) };
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(slow));
        Assert.Contains(planned.Assumptions, a => a.Contains("3 observed touches", StringComparison.Ordinal));

        // The same plan takes longer on a slower bench.
        Plan plan = PlanDemo.Planned.Plans.First(p => p.Alloy is not null && p.First.Setting.Preheat is not null);
        PlanSampler sampler = new(Shelf.Engine, Shelf.Alloys.Properties, PlanDemo.Workshop.Limits);
        FlowSpread usual = sampler.Sample(PlanDemo.Request, plan, 60);
        FlowSpread calibrated = sampler.Sample(slow, plan, 60);
        Assert.True(Seconds(calibrated.P50) > Seconds(usual.P50));
    }

    private static double Seconds(SampledTime time) => time is SampledTime.At at ? at.Value.Seconds : double.PositiveInfinity;
}
