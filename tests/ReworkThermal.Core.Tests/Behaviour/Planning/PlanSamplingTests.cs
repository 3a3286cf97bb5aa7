using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Planning.Uncertainty;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>Sampling of a plan of the demo request; the expectations are those of the definitions.</summary>
public class PlanSamplingTests(ITestOutputHelper output)
{
    private const int Samples = 60;

    private static readonly Plan _plan = PlanDemo.Planned.Plans.First(p => p.Alloy is not null && p.First.Setting.Preheat is not null);

    private static readonly Lazy<FlowSpread> _spread = new(() => Sampler().Sample(PlanDemo.Request, _plan, Samples));

    [Fact]
    public void Quantiles_are_in_order_and_enclose_the_central_time()
    {
        FlowSpread spread = _spread.Value;
        output.WriteLine(spread.ToString());
        (double p10, double p50, double p90) = (SecondsOf(spread.P10), SecondsOf(spread.P50), SecondsOf(spread.P90));
        Assert.True(p10 < p50 && p50 < p90);
        Assert.InRange(_plan.First.TimeToFlow.Seconds, p10, p90);
    }

    [Fact]
    public void Shares_are_sorted_and_do_not_exceed_the_whole()
    {
        FlowSpread spread = _spread.Value;
        foreach (Influence influence in spread.Influences)
        {
            output.WriteLine(FormattableString.Invariant($"{influence.Input.Name}: {influence.Share:P1} ({influence.Input.Low} to {influence.Input.High} {influence.Input.Unit}, {influence.Input.Provenance.Source})"));
        }

        Assert.Equal(spread.Influences.OrderByDescending(i => i.Share), spread.Influences);
        Assert.InRange(spread.Explained, 0.5, 1.05);
        Assert.Equal(spread.Explained, spread.Influences.Sum(i => i.Share), 9);
        Assert.All(spread.Influences, i => Assert.False(string.IsNullOrWhiteSpace(i.Input.Provenance.Source)));
    }

    [Fact]
    public void The_same_seed_gives_the_same_answer_on_one_core_and_on_many()
    {
        FlowSpread again = Sampler().Sample(PlanDemo.Request, _plan, Samples);
        using OneCore scheduler = new();
        FlowSpread alone = scheduler.Run(() => Sampler().Sample(PlanDemo.Request, _plan, Samples));
        Assert.Equal(_spread.Value.P50, again.P50);
        Assert.Equal(_spread.Value.P90, alone.P90);
        Assert.Equal(_spread.Value.Influences.Select(i => i.Share), alone.Influences.Select(i => i.Share));
    }

    [Fact]
    public void A_bench_without_deviations_is_the_bench_of_the_plan()
    {
        IReadOnlyList<UncertainInput> inputs = UncertainInputs.Of(PlanDemo.Request, _plan.First.Setting, _plan.Melting.Uncertainty);
        BenchVariation centre = new(inputs, new double[inputs.Count]);
        Assert.Equal(_plan.First.Setting.Set.Kelvins, centre.Applied(_plan.First.Setting).Set.Kelvins, 9);
        Assert.Equal(1, centre.SolderFill, 12);
        Assert.Equal(0, centre.FlowShiftK, 12);
        Workload work = Workload.Of(PlanDemo.Request, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        FilledMixes mixes = new(Shelf.Engine, Shelf.Alloys.Properties, work, _plan);
        for (int level = 0; level < FilledMixes.Levels; level++)
        {
            mixes.Prepare(level);
        }

        (HeatFlow.Materials.EnthalpyCurve curve, double flowC) = mixes.At(1);
        BriefRun run = TouchSimulator.RunUntilFlow(
            centre.Applied(PlanDemo.Request), curve, flowC, work.Limits.Superheat.Value, centre.Applied(_plan.First.Setting), Duration.Zero, Duration.FromSeconds(10), CancellationToken.None)!.Value;

        // The plan's run and this one step through time differently; both hold the solver's tolerance.
        Assert.Equal(_plan.First.TimeToFlow.Seconds, run.FlowS!.Value, 0.02 * _plan.First.TimeToFlow.Seconds);
    }

    [Theory]
    [InlineData(InputKind.TipOffset)]
    [InlineData(InputKind.TipContact)]
    public void More_heat_at_the_tip_flows_sooner(InputKind kind)
    {
        Assert.True(SecondsWith(kind, 1.5) < SecondsWith(kind, -1.5));
    }

    [Theory]
    [InlineData(InputKind.ConnectorContact)]
    [InlineData(InputKind.CopperLoad)]
    [InlineData(InputKind.Relief)]
    public void More_copper_and_more_connector_flow_later(InputKind kind)
    {
        Assert.True(SecondsWith(kind, 1.5) > SecondsWith(kind, -1.5));
    }

    [Fact]
    public void Sampling_can_be_stopped()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Sampler().Sample(PlanDemo.Request, _plan, Samples, null, stop.Token));
    }

    private static double SecondsWith(InputKind kind, double deviations)
    {
        IReadOnlyList<UncertainInput> inputs = [.. UncertainInputs.Of(PlanDemo.Request, _plan.First.Setting, _plan.Melting.Uncertainty).Where(i => i.Kind == kind)];
        BenchVariation bench = new(inputs, [deviations]);
        HeatFlow.Materials.EnthalpyCurve curve = new SolderHeat(Shelf.Alloys.Properties).CurveOf(_plan.Melting);
        BriefRun run = TouchSimulator.RunUntilFlow(
            bench.Applied(PlanDemo.Request), curve, _plan.Melting.Flow.DegreesCelsius, PlanDemo.Request.Limits.Superheat.Value, bench.Applied(_plan.First.Setting), Duration.Zero, Duration.FromSeconds(60), CancellationToken.None)!.Value;
        return run.FlowS ?? double.PositiveInfinity;
    }

    private static PlanSampler Sampler() => new(Shelf.Engine, Shelf.Alloys.Properties, PlanDemo.Workshop.Limits);

    private static double SecondsOf(SampledTime time) => time is SampledTime.At at ? at.Value.Seconds : double.PositiveInfinity;

    /// <summary>Runs parallel loops on one thread: a scheduler that works tasks off one after the other.</summary>
    private sealed class OneCore : IDisposable
    {
        private readonly ConcurrentExclusiveSchedulerPair _pair = new();

        public T Run<T>(Func<T> work) =>
            Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.None, _pair.ExclusiveScheduler).GetAwaiter().GetResult();

        public void Dispose() => _pair.Complete();
    }
}
