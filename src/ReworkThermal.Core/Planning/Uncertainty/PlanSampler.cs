using ReworkThermal.Core.Damage;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>
/// Runs the first touch of a plan on many benches drawn from the ranges of the uncertain inputs. The same seed gives the same answer on
/// any number of cores.
/// </summary>
/// <param name="engine">Phase equilibria.</param>
/// <param name="properties">Density and conductivity rules.</param>
/// <param name="limits">Damage limits.</param>
public sealed class PlanSampler(PhaseEngine engine, SolderProperties properties, DamageLimits limits)
{
    /// <summary>Number of benches that a plan is usually sampled on.</summary>
    public const int UsualSamples = 200;

    // A fixed seed: two people who ask the same question get the same answer.
    private const ulong Seed = 20_260_101;

    /// <summary>Samples every plan of an answer.</summary>
    /// <param name="request">The request.</param>
    /// <param name="outcome">The answer.</param>
    /// <param name="samples">Number of benches per plan, 10 or more.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <param name="cancellation">Stops the runs.</param>
    /// <returns>The answer with the spread of each plan; an answer without plans as it is.</returns>
    public PlanOutcome Sampled(PlanRequest request, PlanOutcome outcome, int samples, IProgress<PlanProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (outcome is not PlanOutcome.Planned planned)
        {
            return outcome;
        }

        List<Plan> plans = [];
        foreach (Plan plan in planned.Plans)
        {
            double start = (double)plans.Count / planned.Plans.Count;
            Progress part = new(progress, start, 1.0 / planned.Plans.Count);
            plans.Add(plan with { Sampling = Sample(request, plan, samples, part, cancellation) });
        }

        return planned with { Plans = plans };
    }

    /// <summary>Samples the first touch of one plan.</summary>
    /// <param name="request">The request.</param>
    /// <param name="plan">A plan that answers it.</param>
    /// <param name="samples">Number of benches, 10 or more.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <param name="cancellation">Stops the runs.</param>
    /// <returns>The spread.</returns>
    public FlowSpread Sample(PlanRequest request, Plan plan, int samples, IProgress<PlanProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfLessThan(samples, 10);
        Workload work = Workload.Of(request, limits, properties);
        IReadOnlyList<UncertainInput> inputs = UncertainInputs.Of(request, plan.First.Setting, plan.Melting.Uncertainty);
        double[][] places = LatinHypercube.Normal(samples, inputs.Count, Seed);
        LearnedBench.Shift(request.Calibration, inputs, places);
        BenchVariation[] benches = [.. places.Select(p => new BenchVariation(inputs, p))];
        FilledMixes mixes = new(engine, properties, work, plan);
        Duration longest = work.LongestWith(plan.First.Setting);
        BriefRun?[] runs = new BriefRun?[samples];
        int done = 0;
        ParallelOptions options = new() { CancellationToken = cancellation };
        Parallel.For(0, FilledMixes.Levels, options, mixes.Prepare);
        Parallel.For(0, samples, options, i =>
        {
            runs[i] = Run(work, plan, benches[i], mixes, longest, cancellation);
            progress?.Report(new PlanProgress((double)Interlocked.Increment(ref done) / samples, "heating the joint on sampled benches"));
        });
        return Summary(plan, work, inputs, places, runs, longest);
    }

    private static BriefRun? Run(Workload work, Plan plan, BenchVariation bench, FilledMixes mixes, Duration longest, CancellationToken cancellation)
    {
        (EnthalpyCurve curve, double flowC) = mixes.At(bench.SolderFill);
        return TouchSimulator.RunUntilFlow(
            bench.Applied(work.Request),
            curve,
            flowC + bench.FlowShiftK,
            work.Limits.Superheat.Value,
            bench.Applied(plan.First.Setting),
            work.Limits.WorkingTime.Value,
            longest,
            cancellation);
    }

    private static FlowSpread Summary(Plan plan, Workload work, IReadOnlyList<UncertainInput> inputs, double[][] places, BriefRun?[] runs, Duration longest)
    {
        // A run that could not be solved counts as one that never flows: the doubtful side.
        double[] times = [.. runs.Select(r => r?.FlowS ?? double.PositiveInfinity)];
        double[] sorted = [.. times.Order()];
        double working = work.Limits.WorkingTime.Value.Seconds;
        (double[] shares, double explained) = RankRegression.Shares(places, times);
        return new FlowSpread(
            runs.Length,
            longest,
            Quantile(sorted, 0.1, longest),
            Quantile(sorted, 0.5, longest),
            Quantile(sorted, 0.9, longest),
            runs.Count(r => r?.WorkableS + working <= plan.First.Stop.Seconds),
            runs.Count(r => r is { } run && run.PadPeakC > work.Limits.MostPadTemperature.Value.DegreesCelsius),
            [.. inputs.Zip(shares, (i, s) => new Influence(i, s)).OrderByDescending(i => i.Share)],
            explained);
    }

    // Linear between the middles of the sorted samples.
    private static SampledTime Quantile(double[] sorted, double share, Duration followed)
    {
        double place = Math.Clamp((share * sorted.Length) - 0.5, 0, sorted.Length - 1);
        int below = (int)Math.Floor(place);
        int above = Math.Min(below + 1, sorted.Length - 1);
        double value = sorted[above].Equals(sorted[below]) ? sorted[below] : sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
        return double.IsFinite(value) ? new SampledTime.At(Duration.FromSeconds(value)) : new SampledTime.LaterThan(followed);
    }

    private sealed class Progress(IProgress<PlanProgress>? outer, double start, double share) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => outer?.Report(value with { Share = start + (share * value.Share) });
    }
}
