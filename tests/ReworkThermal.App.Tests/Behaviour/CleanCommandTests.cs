using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class CleanCommandTests
{
    private static readonly string[] _question = ["clean", "--joint", "jack-anchor-six-layer", "--with", "Bi58Sn42", "--refill", "Sn63Pb37"];

    [Fact]
    public void Enough_passes_make_a_clean_joint()
    {
        BenchResult result = Bench.Run([.. _question, "--passes", "4", "--json"]);
        Assert.Equal(0, result.Code);
        JsonElement json = result.Json();
        Assert.True(json.GetProperty("clean").GetBoolean());
        Assert.True(json.GetProperty("liquid_fraction_at_140c").GetDouble() <= 0.001);
        Assert.Contains("clean", json.GetProperty("verdict").GetString(), StringComparison.Ordinal);

        // A full pass of 80 % removal leaves 20 % of the joint.
        Assert.Equal(0.2, json.GetProperty("residue_fraction").GetDouble(), 6);
        Assert.Equal(1, json.GetProperty("final_mix").EnumerateObject().Sum(f => f.Value.GetDouble()), 5);
        Assert.True(json.GetProperty("final_scheil_end_c").GetDouble() <= json.GetProperty("final_solidus_c").GetDouble() + 1e-6);
    }

    [Fact]
    public void Too_few_passes_are_answered_with_no_and_the_number_that_is_enough()
    {
        BenchResult result = Bench.Run([.. _question, "--passes", "1", "--json"]);
        Assert.Equal(1, result.Code);
        JsonElement json = result.Json();
        Assert.False(json.GetProperty("clean").GetBoolean());
        int enough = json.GetProperty("passes_enough").GetInt32();
        JsonElement[] rows = [.. json.GetProperty("by_passes").EnumerateArray()];
        Assert.True(rows[enough - 1].GetProperty("liquid_fraction_at_140c").GetDouble() <= 0.001);
        Assert.True(rows[enough - 2].GetProperty("liquid_fraction_at_140c").GetDouble() > 0.001);
    }

    [Fact]
    public void Copper_taken_up_changes_the_joint()
    {
        double without = FlowOf("--copper-mg", "0");
        double with = FlowOf("--copper-mg", "0.3");
        Assert.NotEqual(without, with);
    }

    [Theory]
    [InlineData("--passes", "0", "--passes")]
    [InlineData("--passes", "1.5", "whole number")]
    [InlineData("--passes", "NaN", "--passes")]
    public void A_wrong_number_of_passes_is_refused(string option, string value, string fragment)
    {
        BenchResult result = Bench.Run([.. _question, option, value]);
        Assert.Equal(2, result.Code);
        Assert.Contains(fragment, result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_way_of_removal_names_the_known_ones()
    {
        BenchResult result = Bench.Run([.. _question, "--passes", "2", "--removal", "teeth"]);
        Assert.Equal(2, result.Code);
        Assert.Contains("braid", result.Error, StringComparison.Ordinal);
    }

    private static double FlowOf(params string[] metal) =>
        Bench.Run(["dilute", "--joint", "jack-anchor-six-layer", "--with", "Bi58Sn42", "--ratio", "0.3", "--json", .. metal]).Json().GetProperty("liquidus_c").GetDouble();
}
