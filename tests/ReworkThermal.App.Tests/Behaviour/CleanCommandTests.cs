using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class CleanCommandTests
{
    private static readonly string[] _question = ["clean", "--joint", "jack-anchor-six-layer", "--with", "Bi52Pb32Sn16", "--refill", "Sn96.5Ag3Cu0.5"];

    [Fact]
    public void The_JSON_answer_holds_every_promised_field()
    {
        JsonElement json = Bench.Run([.. _question, "--passes", "3", "--json"]).Json();
        foreach (string field in new[] { "residue_fraction", "final_solidus_c", "final_scheil_end_c", "liquid_fraction_at_100c", "liquid_fraction_at_140c" })
        {
            Assert.Equal(JsonValueKind.Number, json.GetProperty(field).ValueKind);
        }

        Assert.Equal(1, json.GetProperty("final_mix").EnumerateObject().Sum(f => f.Value.GetDouble()), 5);
        Assert.NotEmpty(json.GetProperty("verdict").GetString()!);
    }

    [Fact]
    public void Every_pass_leaves_less_of_the_added_alloy()
    {
        JsonElement json = Bench.Run([.. _question, "--json"]).Json();
        double[] lead = [.. json.GetProperty("by_passes").EnumerateArray().Select(l => l.GetProperty("final_mix").TryGetProperty("Pb", out JsonElement share) ? share.GetDouble() : 0)];
        for (int i = 1; i < lead.Length; i++)
        {
            Assert.True(lead[i] <= lead[i - 1]);
        }
    }

    [Fact]
    public void Too_few_passes_are_answered_with_no_and_with_the_number_that_is_enough()
    {
        BenchResult result = Bench.Run([.. _question, "--passes", "1", "--json"]);
        Assert.Equal(1, result.Code);
        JsonElement json = result.Json();
        Assert.False(json.GetProperty("clean").GetBoolean());
        int enough = json.GetProperty("passes_enough").GetInt32();
        Assert.True(enough > 1);
        Assert.Equal(0, Bench.Run([.. _question, "--passes", enough.ToString(System.Globalization.CultureInfo.InvariantCulture)]).Code);
    }

    [Theory]
    [InlineData("--passes", "0")]
    [InlineData("--passes", "2.5")]
    [InlineData("--passes", "many")]
    [InlineData("--ratio", "0,3")]
    [InlineData("--removal", "teeth")]
    [InlineData("--solder", "Sn91Al9")]
    public void What_cannot_be_is_a_usage_mistake(params string[] words)
    {
        Bench.Run([.. _question, .. words]).MustBeRefused(2, words[1]);
    }
}
