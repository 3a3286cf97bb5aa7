using FsCheck.Xunit;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Uncertainty;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>Rules that stratified samples, ranges and rank regression keep by definition.</summary>
public class PlanStatisticsTests
{
    [Fact]
    public void Every_slice_of_equal_probability_holds_one_sample_of_each_variable()
    {
        const int Samples = 50;
        double[][] rows = LatinHypercube.Normal(Samples, 4, 7);
        for (int v = 0; v < 4; v++)
        {
            IEnumerable<int> slices = rows.Select(r => (int)(Samples * MathNet.Numerics.Distributions.Normal.CDF(0, 1, r[v]))).Order();
            Assert.Equal(Enumerable.Range(0, Samples), slices);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_samples_and_another_seed_others()
    {
        Assert.Equal(LatinHypercube.Normal(20, 3, 11), LatinHypercube.Normal(20, 3, 11));
        Assert.NotEqual(LatinHypercube.Normal(20, 3, 11), LatinHypercube.Normal(20, 3, 12));
    }

    [Fact]
    public void A_range_holds_nine_in_ten_and_keeps_its_centre()
    {
        UncertainInput input = new(InputKind.TipContact, "contact", "W/m2K", 100, 40, 300, true, new Provenance("test", EvidenceMark.Judgement), "test");
        Assert.Equal(100, input.At(0), 12);
        Assert.Equal(40, input.At(-UncertainInput.RangeEnd), 9);
        Assert.Equal(300, input.At(UncertainInput.RangeEnd), 9);
        Assert.Equal(0.95, MathNet.Numerics.Distributions.Normal.CDF(0, 1, UncertainInput.RangeEnd), 9);
    }

    [Property(MaxTest = 200)]
    public bool A_value_rises_with_its_deviations(double a, double b)
    {
        UncertainInput input = new(InputKind.TipOffset, "offset", "K", 0, -15, 10, false, new Provenance("test", EvidenceMark.Judgement), "test");
        double x = double.IsFinite(a) ? Math.Tanh(a) * 4 : 0;
        double y = double.IsFinite(b) ? Math.Tanh(b) * 4 : 0;
        (double low, double high) = x <= y ? (x, y) : (y, x);

        // Two deviations a rounding apart may give one value, never two in the other order.
        return high - low > 1e-9 ? input.At(low) < input.At(high) : input.At(low) <= input.At(high);
    }

    [Fact]
    public void One_input_that_decides_everything_has_the_whole_share()
    {
        double[][] rows = LatinHypercube.Normal(100, 3, 3);
        (double[] shares, double explained) = RankRegression.Shares(rows, [.. rows.Select(r => Math.Exp(2 * r[1]))]);
        Assert.Equal(1, shares[1], 9);
        Assert.Equal(1, explained, 9);
    }

    [Fact]
    public void Two_equal_inputs_share_alike_and_an_idle_one_has_none()
    {
        double[][] rows = LatinHypercube.Normal(400, 3, 5);
        (double[] shares, double explained) = RankRegression.Shares(rows, [.. rows.Select(r => r[0] - r[2])]);

        // Ranks of a sum are not the sum of ranks: for two equal normal inputs R² of the rank regression is about 0.97.
        Assert.Equal(0.49, shares[0], 0.05);
        Assert.Equal(0.49, shares[2], 0.05);
        Assert.True(shares[1] < 0.01);
        Assert.InRange(explained, 0.9, 1);
    }

    [Fact]
    public void Equal_outcomes_share_their_rank_and_never_ranks_last()
    {
        Assert.Equal([1, 4.5, 2.5, 4.5, 2.5], RankRegression.Ranks([1, double.PositiveInfinity, 2, double.PositiveInfinity, 2]));
    }

    [Fact]
    public void An_outcome_that_does_not_vary_blames_nothing()
    {
        (double[] shares, double explained) = RankRegression.Shares(LatinHypercube.Normal(20, 2, 1), new double[20]);
        Assert.All(shares, s => Assert.Equal(0, s));
        Assert.Equal(0, explained);
    }
}
