using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using ReworkThermal.Core.Numerics;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Planning.Uncertainty;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>
/// Calibration on made-up touches whose truth is known. Runs of the real simulator are fitted once by a quadratic surface per touch,
/// which then plays both the bench and the model, so that hundreds of trials are quick; one test goes through the simulator itself.
/// </summary>
public class CalibrationFitTests(ITestOutputHelper output)
{
    private const int Trials = 200;
    private const int Observed = 4;
    private const double Timing = 0.1;
    private const double ReadingK = 5;

    private static readonly Lazy<Surface> _surface = new(() => Surface.Of(Touches()));

    [Fact]
    public void The_surface_follows_the_simulator()
    {
        // Spread of log seconds that the surface misses at its corners. Since the contact grows while the touch lasts, the logarithm of the
        // time bends more than a parabola: up to 0.15, while most of the surface lies below the timing error of a touch.
        output.WriteLine(FormattableString.Invariant($"largest miss {_surface.Value.LargestMiss:0.000}"));
        Assert.True(_surface.Value.LargestMiss < 2 * Timing);
    }

    [Fact]
    public void Intervals_of_eight_tenths_hold_the_truth_seven_to_nine_times_in_ten()
    {
        int[] held = new int[UncertainInputs.Learnable.Count];
        foreach ((double[] truth, FitOutcome.Fitted fit) in Tried())
        {
            for (int i = 0; i < held.Length; i++)
            {
                double half = LearnedInput.MiddleEightTenths * Math.Sqrt(fit.Covariance[i][i]);
                held[i] += Math.Abs(truth[i] - fit.Deviations[i]) <= half ? 1 : 0;
            }
        }

        output.WriteLine(string.Join(", ", held.Zip(UncertainInputs.Learnable, (h, k) => FormattableString.Invariant($"{k} {h}/{Trials}"))));
        Assert.All(held, h => Assert.InRange(h, 0.7 * Trials, 0.9 * Trials));
    }

    [Fact]
    public void What_matters_is_learned_better_than_the_range_knows_it()
    {
        double narrowest = Tried().Average(t => Enumerable.Range(0, t.Truth.Length).Min(i => Math.Sqrt(t.Fit.Covariance[i][i])));
        Assert.True(narrowest < 0.8);
    }

    [Fact]
    public void The_middle_time_of_touches_that_were_not_used_is_not_worse_afterwards()
    {
        // One trial can be unlucky with its noise; what must hold is that over all trials every held-out touch is foretold better.
        for (int touch = Observed; touch < _surface.Value.Count; touch++)
        {
            double before = Tried().Average(t => Math.Abs(_surface.Value.Expected(touch, new double[t.Truth.Length]) - _surface.Value.Expected(touch, t.Truth)));
            double after = Tried().Average(t => Math.Abs(_surface.Value.Expected(touch, [.. t.Fit.Deviations]) - _surface.Value.Expected(touch, t.Truth)));
            output.WriteLine(FormattableString.Invariant($"touch {touch}: {before:0.000} before, {after:0.000} after"));
            Assert.True(after < before);
        }
    }

    [Fact]
    public void A_touch_that_did_not_flow_pulls_towards_a_slower_bench()
    {
        double usual = Math.Exp(_surface.Value.Expected(0, new double[UncertainInputs.Learnable.Count]));
        FitOutcome.Fitted slower = Fit([new Sighting.NotFlowed(Duration.FromSeconds(1.3 * usual))]);
        Assert.True(_surface.Value.Expected(0, [.. slower.Deviations]) > Math.Log(usual));

        // Not having flowed long before it should says nothing.
        FitOutcome.Fitted early = Fit([new Sighting.NotFlowed(Duration.FromSeconds(0.2 * usual))]);
        Assert.All(early.Deviations, d => Assert.Equal(0, d, 0.02));
    }

    [Fact]
    public void A_touch_that_flowed_at_some_time_pulls_towards_a_quicker_bench_and_never_the_other_way()
    {
        double usual = Math.Exp(_surface.Value.Expected(0, new double[UncertainInputs.Learnable.Count]));
        FitOutcome.Fitted quicker = Fit([new Sighting.FlowedWithin(Duration.FromSeconds(0.75 * usual))]);
        Assert.True(_surface.Value.Expected(0, [.. quicker.Deviations]) < Math.Log(usual));

        // Having flowed long after it should says nothing: the tool may have stayed on.
        FitOutcome.Fitted late = Fit([new Sighting.FlowedWithin(Duration.FromSeconds(5 * usual))]);
        Assert.All(late.Deviations, d => Assert.Equal(0, d, 0.02));
    }

    [Fact]
    public void An_impossible_time_is_set_aside_and_the_others_are_fitted_as_without_it()
    {
        double[] centre = new double[UncertainInputs.Learnable.Count];
        List<Sighting> good = [.. Enumerable.Range(0, Observed).Select(i => new Sighting.Flowed(Duration.FromSeconds(Math.Exp(_surface.Value.Expected(i, centre)))))];
        List<Sighting> spoilt = [.. good];
        spoilt[1] = new Sighting.Flowed(((Sighting.Flowed)good[1]).After * 10);
        FitOutcome.Fitted fit = Fit(spoilt);
        Assert.Equal([1], fit.Touches.Index().Where(t => t.Item.IsOutlier).Select(t => t.Index));
        Assert.All(fit.Deviations, d => Assert.Equal(0, d, 0.05));
    }

    [Fact]
    public void Without_observations_there_is_no_calibration()
    {
        Assert.IsType<FitOutcome.NotFitted>(new Calibrator(Shelf.Alloys.Properties).Fit([]));
    }

    [Fact]
    public void Through_the_simulator_itself_a_slow_bench_is_recognised()
    {
        double[] slow = [-1, 1, -1];
        List<BenchObservation> touches = [.. Touches().Take(2)];
        SimulatedResponse response = new(touches, Shelf.Alloys.Properties, CancellationToken.None);
        List<BenchObservation> seen = [.. touches.Select((t, i) => t with { Seen = new Sighting.Flowed(Duration.FromSeconds(Math.Exp(response.Expected(i, slow)))) })];
        FitOutcome.Fitted fit = Assert.IsType<FitOutcome.Fitted>(new Calibrator(Shelf.Alloys.Properties).Fit(seen));
        Assert.All(fit.Touches.Zip(seen), t =>
        {
            double truth = ((Sighting.Flowed)t.Second.Seen).After.Seconds;
            Assert.True(Math.Abs(Math.Log(t.First.Expected / truth)) < Math.Abs(Math.Log(t.First.Before / truth)));
        });
    }

    private static IReadOnlyList<(double[] Truth, FitOutcome.Fitted Fit)> Tried() => _tried.Value;

    private static readonly Lazy<IReadOnlyList<(double[] Truth, FitOutcome.Fitted Fit)>> _tried = new(() =>
    {
        SplitMix64 random = new(2026);
        List<(double[], FitOutcome.Fitted)> tried = [];
        for (int trial = 0; trial < Trials; trial++)
        {
            double[] truth = [.. UncertainInputs.Learnable.Select(_ => Gauss(random))];
            tried.Add((truth, Fit([.. Enumerable.Range(0, Observed).Select(i =>
                new Sighting.Flowed(Duration.FromSeconds(Math.Exp(_surface.Value.Expected(i, truth) + (Timing * Gauss(random))))))])));
        }

        return tried;
    });

    private static double Gauss(SplitMix64 random) => Normal.InvCDF(0, 1, Math.Max(1e-12, random.NextUnit()));

    private static FitOutcome.Fitted Fit(IReadOnlyList<Sighting> seen)
    {
        FitOutcome outcome = new CalibrationFit(seen, _surface.Value, Timing, ReadingK).Run(CancellationToken.None);
        Assert.True(outcome is FitOutcome.Fitted, (outcome as FitOutcome.NotFitted)?.Reason);
        return (FitOutcome.Fitted)outcome;
    }

    /// <summary>Four touches to learn from and two to foretell, all with a leaded joint over the preheater, so that all of them flow.</summary>
    private static List<BenchObservation> Touches()
    {
        MeltingBehaviour leaded = PlanDemo.Melting("Sn63Pb37");
        return [.. new (int Iron, double SetC, double BoardC)[] { (0, 300, 150), (0, 360, 120), (1, 300, 120), (1, 340, 150), (0, 330, 135), (1, 380, 110) }
            .Select(t => new BenchObservation(
                PlanDemo.Request,
                new ToolSetting(
                    PlanDemo.Request.Bench.Irons[t.Iron],
                    Temperature.FromDegreesCelsius(t.SetC),
                    new BoardHeat(PlanDemo.Request.Bench.Preheaters[0], Temperature.FromDegreesCelsius(t.BoardC))),
                leaded,
                1,
                new Sighting.Flowed(Duration.FromSeconds(3))))];
    }

    /// <summary>Quadratic surfaces of log seconds over the learnable inputs, one per touch.</summary>
    private sealed class Surface(IReadOnlyList<Vector<double>> coefficients, double largestMiss) : ITouchResponse
    {
        private const int Runs = 40;

        public int Count => coefficients.Count;

        public double LargestMiss => largestMiss;

        public static Surface Of(List<BenchObservation> touches)
        {
            SimulatedResponse real = new(touches, Shelf.Alloys.Properties, CancellationToken.None);
            double[][] places = LatinHypercube.Normal(Runs, UncertainInputs.Learnable.Count, 99);
            Matrix<double> terms = Matrix<double>.Build.DenseOfRowArrays(places.Select(p => Terms(p)));
            List<Vector<double>> fitted = [];
            double miss = 0;
            for (int touch = 0; touch < touches.Count; touch++)
            {
                double[] values = new double[Runs];
                int which = touch;
                Parallel.For(0, Runs, i => values[i] = real.Expected(which, places[i]));
                Vector<double> seen = Vector<double>.Build.Dense(values);
                Vector<double> solution = terms.QR().Solve(seen);
                miss = Math.Max(miss, Math.Sqrt((terms * solution - seen).PointwisePower(2).Average()));
                fitted.Add(solution);
            }

            return new Surface(fitted, miss);
        }

        public double Expected(int touch, ReadOnlySpan<double> deviations) => coefficients[touch].DotProduct(Vector<double>.Build.Dense(Terms(deviations)));

        private static double[] Terms(ReadOnlySpan<double> z) => [1, z[0], z[1], z[2], z[0] * z[0], z[1] * z[1], z[2] * z[2], z[0] * z[1], z[0] * z[2], z[1] * z[2]];
    }
}
