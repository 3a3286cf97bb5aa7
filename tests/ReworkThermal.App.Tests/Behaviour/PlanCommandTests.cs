using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class PlanCommandTests
{
    private static string Demo => File.ReadAllText(Bench.DemoRequest);

    [Fact]
    public void The_demo_request_gets_plans_that_differ_and_hold_every_promised_field()
    {
        BenchResult result = Run(Demo);
        Assert.True(result.Code == 0, result.Error + result.Out);
        JsonElement json = result.Json();
        JsonElement[] plans = [.. json.GetProperty("plans").EnumerateArray()];
        Assert.True(plans.Length >= 3, $"only {plans.Length} plans");
        foreach (JsonElement plan in plans)
        {
            foreach (string field in new[] { "alloy", "added_mass_mg", "iron_set_c", "preheat_c", "air_set_c", "air_flow_lpm", "dwell_s", "stop_s", "passes", "budget_share", "binding_limit", "time_to_flow_p10_s", "time_to_flow_p50_s", "time_to_flow_p90_s" })
            {
                Assert.True(plan.TryGetProperty(field, out _), field);
            }

            Assert.True(plan.GetProperty("dwell_s").GetDouble() <= plan.GetProperty("stop_s").GetDouble());
            Assert.True(plan.GetProperty("time_to_flow_s").GetDouble() <= plan.GetProperty("dwell_s").GetDouble());
            Assert.True(plan.GetProperty("passes").GetInt32() >= 1);
        }

        Assert.Equal(plans.Length, plans.Select(p => (Alloy(p), p.GetProperty("added_mass_mg").GetDouble(), p.GetProperty("iron_set_c").ToString(), p.GetProperty("air_set_c").ToString(), p.GetProperty("preheat_c").ToString())).Distinct().Count());
        Assert.NotEmpty(json.GetProperty("ruled_out").EnumerateArray());
    }

    [Fact]
    public void The_answer_says_that_the_joint_does_not_flow_as_it_is_without_preheat()
    {
        string text = Run(Demo, json: false).Out;
        Assert.Contains("without preheat", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("solder = \"Sn96.5Ag3Cu0.5\"", "solder = \"Sn91Al9\"", "aluminium is not modelled", "solder")]
    [InlineData("board = \"six-layer-controller\"", "board = \"eight-layer-drive\"", "one connection per copper layer", "joint")]
    [InlineData("ambient = \"23 C\"", "ambient = \"nan C\"", "must be a temperature", "bench.ambient")]
    [InlineData("wire_diameter = \"0.8 mm\"", "wire_diameter = \"-0.8 mm\"", "must be at least", "bench.wire_diameter")]
    [InlineData("side = \"bottom\"", "side = \"left\"", "must be one of", "side")]
    [InlineData("title = ", "titel = ", "is missing", "title")]
    [InlineData("side = \"bottom\"", "side = \"bottom", "not valid TOML", "line 6")]
    public void A_request_that_cannot_be_used_is_refused_with_file_line_and_field(string was, string becomes, string because, string field)
    {
        Run(Demo.Replace(was, becomes, StringComparison.Ordinal)).MustBeRefused(3, "request.toml, line ", field, because);
    }

    [Fact]
    public void A_missing_request_is_bad_data()
    {
        Bench.Run("plan", "no-such-request.toml").MustBeRefused(3, "no-such-request.toml: there is no such file");
    }

    private static string Alloy(JsonElement plan) => plan.GetProperty("alloy").ToString();

    private static BenchResult Run(string text, bool json = true)
    {
        using TemporaryFolder folder = new();
        string path = folder.Write("request.toml", text);
        return json ? Bench.Run("plan", path, "--samples", "20", "--json") : Bench.Run("plan", path, "--samples", "0");
    }
}
