using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class DiluteCommandTests
{
    private const string Joint = "jack-anchor-six-layer";

    [Fact]
    public void One_alloy_in_one_amount_is_the_answer_itself()
    {
        BenchResult result = Bench.Run("dilute", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "0.3", "--json");
        Assert.Equal(0, result.Code);
        JsonElement json = result.Json();
        Assert.Equal(0.3, json.GetProperty("ratio").GetDouble());
        JsonElement mix = json.GetProperty("mix");
        Assert.Equal(1, mix.EnumerateObject().Sum(f => f.Value.GetDouble()), 5);

        // Mass balance: 30 % of an alloy with 58 % bismuth brings 17.4 % bismuth.
        Assert.Equal(0.174, mix.GetProperty("Bi").GetDouble(), 5);
        double joint = json.GetProperty("solder_mass_mg").GetDouble();
        double added = json.GetProperty("added_mass_mg").GetDouble();
        Assert.Equal(0.3, added / (added + joint), 3);
        Assert.True(json.GetProperty("converged").GetBoolean());
    }

    [Fact]
    public void A_ranking_reaches_its_target_and_starts_with_the_smallest_amount()
    {
        JsonElement json = Bench.Run("dilute", "--joint", Joint, "--target-flow", "180", "--json").Json();
        JsonElement[] lines = [.. json.GetProperty("dilutions").EnumerateArray()];
        Assert.NotEmpty(lines);
        Assert.All(lines, l => Assert.True(l.GetProperty("flow_c").GetDouble() <= 180));
        double[] masses = [.. lines.Select(l => l.GetProperty("added_mass_mg").GetDouble())];
        Assert.Equal(masses.Order(), masses);
    }

    [Fact]
    public void Lead_free_only_leaves_leaded_alloys_out_with_the_reason()
    {
        JsonElement json = Bench.Run("dilute", "--joint", Joint, "--ratio", "0.4", "--lead-free", "--json").Json();
        Assert.All(json.GetProperty("dilutions").EnumerateArray(), l => Assert.False(l.GetProperty("mix").TryGetProperty("Pb", out _)));
        Assert.Contains(json.GetProperty("excluded").EnumerateArray(), e => e.GetProperty("reason").GetString()!.Contains("lead", StringComparison.Ordinal));
    }

    [Fact]
    public void A_target_that_no_amount_reaches_is_answered_with_no()
    {
        BenchResult result = Bench.Run("dilute", "--joint", Joint, "--with", "Sn63Pb37", "--target-flow", "150");
        Assert.Equal(1, result.Code);
        Assert.Contains("150 °C", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_said_is_assumed_aloud()
    {
        JsonElement json = Bench.Run("dilute", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "0.3", "--json").Json();
        string notes = string.Join('\n', json.GetProperty("notes").EnumerateArray().Select(n => n.GetString()));
        Assert.Contains("--solder names another", notes, StringComparison.Ordinal);
        Assert.Contains("--board names another", notes, StringComparison.Ordinal);
        Assert.Contains("--wire names another", notes, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("must lie between 0 and 0.9", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "1.2")]
    [InlineData("must lie between 0 and 0.9", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "-0.3")]
    [InlineData("needs a number with a decimal point", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "0,3")]
    [InlineData("needs a number with a decimal point", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "NaN")]
    [InlineData("needs a number with a decimal point", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "Infinity")]
    [InlineData("either --ratio", "--joint", Joint, "--with", "Bi58Sn42")]
    [InlineData("either --ratio", "--joint", Joint, "--ratio", "0.3", "--target-flow", "170")]
    [InlineData("'nowhere' is not known", "--joint", "nowhere", "--ratio", "0.3")]
    [InlineData("'Bi99' is not known", "--joint", Joint, "--with", "Bi99", "--ratio", "0.3")]
    [InlineData("does not fit the board", "--joint", "jack-anchor-two-layer", "--board", "six-layer-controller", "--ratio", "0.3")]
    [InlineData("aluminium is not modelled", "--joint", Joint, "--solder", "Sn91Al9", "--ratio", "0.3")]
    [InlineData("--joint", "--ratio", "0.3")]
    public void A_wish_that_cannot_be_met_is_refused_with_the_reason(string because, params string[] words)
    {
        Bench.Run(["dilute", .. words]).MustBeRefused(2, because);
    }

    [Fact]
    public void Without_an_alloy_all_are_ranked_at_an_assumed_target()
    {
        JsonElement json = Bench.Run("dilute", "--joint", Joint, "--json").Json();
        Assert.True(json.GetProperty("dilutions").GetArrayLength() > 3);
        Assert.Contains(json.GetProperty("notes").EnumerateArray(), n => n.GetString()!.Contains("--target-flow sets another", StringComparison.Ordinal));
    }

    [Fact]
    public void Copper_taken_up_raises_the_liquidus()
    {
        Assert.True(LiquidusWith("0.3") > LiquidusWith("0") + 1);

        static double LiquidusWith(string milligrams) => Bench
            .Run("dilute", "--joint", Joint, "--with", "Bi58Sn42", "--ratio", "0.3", "--json", "--copper-mg", milligrams)
            .Json().GetProperty("liquidus_c").GetDouble();
    }
}
