using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Data;

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
            Assert.Equal(plan.After.Gauges.Count, lines.Count(l => l.Step == "heat budget") - 2);
        }
    }

    /// <summary>Figures as a technician reads them: each must stand in the reasons of its plan.</summary>
    [Fact]
    public void Every_figure_that_is_printed_is_among_the_reasons()
    {
        foreach ((PlanRequest request, Plan plan) in PlanDemo.Planned.Plans.Select(p => (PlanDemo.Request, p)).Concat(PlanDemo.PlannedAssisted.Plans.Select(p => (PlanDemo.Assisted, p))))
        {
            string reasons = string.Join('\n', PlanReasons.Of(request, plan).Select(l => $"{l.Figure} {l.How}"));
            foreach (string figure in FiguresOf(plan))
            {
                Assert.Contains(figure, reasons, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>What a figure rests on is an assumption, a source or file that exists, what the user stated, or another line.</summary>
    [Fact]
    public void What_a_figure_rests_on_can_be_found()
    {
        string profiles = DataRoot.BesideProgram.Profiles;
        string[] sources = [.. File.ReadLines(Path.Combine(profiles, "sources.toml")).Where(l => l.StartsWith('[')).Select(l => l.Trim('[', ']', ' ', '"'))];
        string[] stated = ["assumption", "the request", "the job store", "the limits below", "the inputs", "the gauges below"];
        foreach (WhyLine line in PlanDemo.Planned.Plans.SelectMany(p => PlanReasons.Of(PlanDemo.Request, p)))
        {
            bool found = stated.Any(s => line.RestsOn.Contains(s, StringComparison.Ordinal))
                || sources.Any(s => line.RestsOn.Contains(s, StringComparison.Ordinal))
                || FilesIn(line.RestsOn).Any(f => Path.Exists(Path.Combine(profiles, f)) || Path.Exists(Path.Combine(profiles, "..", f)));
            Assert.True(found, $"{line.Figure}: {line.RestsOn}");
        }
    }

    private static IEnumerable<string> FilesIn(string restsOn) => restsOn.Split([' ', ',', ';', ':'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Contains('/', StringComparison.Ordinal));

    private static IEnumerable<string> FiguresOf(Plan plan)
    {
        if (plan.Alloy is { } alloy)
        {
            yield return FormattableString.Invariant($"{plan.Added.Milligrams:0.0} mg of {alloy.Name}");
        }

        if (plan.WireLength is { } wire)
        {
            yield return FormattableString.Invariant($"{wire.Millimeters:0.0} mm of ");
        }

        yield return FormattableString.Invariant($"{plan.Melting.Flow.DegreesCelsius:0} °C, plus or minus {plan.Melting.Uncertainty.Kelvins:0} K");
        yield return FormattableString.Invariant($"{plan.Passes} passes");
        yield return FormattableString.Invariant($"solidus {plan.Final.Melting.Solidus.DegreesCelsius:0} °C, last liquid at {plan.Final.Freezing.End.DegreesCelsius:0} °C");
        yield return FormattableString.Invariant($"{plan.BudgetUsed.Central:P0} of the budget");
        foreach (TouchPlan touch in new[] { plan.First, plan.Refit })
        {
            yield return FormattableString.Invariant($" at {touch.Setting.Set.DegreesCelsius:0} °C");
            yield return FormattableString.Invariant($"board at {touch.Board.DegreesCelsius:0} °C");
            if (touch.Setting.Assist is { } help)
            {
                yield return FormattableString.Invariant($"{help.Lead.Seconds:0.#} s of air");
                yield return FormattableString.Invariant($"{help.Set.DegreesCelsius:0} °C, board at");
                yield return FormattableString.Invariant($"{help.Air.Flow.LitersPerMinute:0.#} L/min from {help.Air.Distance.Millimeters:0.#} mm");
            }

            yield return FormattableString.Invariant($"flows after {touch.TimeToFlow.Seconds:0.0} s");
            yield return FormattableString.Invariant($"hold for {touch.Dwell.Seconds:0.0} s");
            yield return FormattableString.Invariant($"stop at {touch.Stop.Seconds:0.0} s");
            yield return FormattableString.Invariant($"{touch.PadPeak.DegreesCelsius:0} °C between pad and laminate");
        }
    }

    /// <summary>The neighbours of the demo joint are invented; one of them bears a heating rate that no iron keeps.</summary>
    [Fact]
    public void Neighbours_and_moisture_are_warned_of()
    {
        Assert.All(PlanDemo.Planned.Plans, p =>
        {
            Assert.Contains(p.Neighbours, n => n is { Part: "C31", Kind: NeighbourStrainKind.Rate, IsOver: true });
            Assert.DoesNotContain(p.Neighbours, n => n is { Kind: NeighbourStrainKind.Temperature, IsOver: true });
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
