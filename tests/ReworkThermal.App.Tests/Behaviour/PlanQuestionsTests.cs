using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

/// <summary>Questions about an answer: why, compare, triage.</summary>
public sealed class PlanQuestionsTests
{
    private static string Demo => Bench.DemoRequest;

    [Fact]
    public void Why_lists_figures_with_what_they_rest_on()
    {
        BenchResult result = Bench.Run("plan", Demo, "--samples", "0", "--why", "1", "--json");
        Assert.True(result.Code == 0, result.Error);
        JsonElement[] lines = [.. result.Json().GetProperty("why").EnumerateArray()];
        Assert.True(lines.Length > 20);
        Assert.All(lines, l => Assert.NotEmpty(l.GetProperty("rests_on").GetString()!));
    }

    [Fact]
    public void Two_plans_stand_side_by_side()
    {
        BenchResult result = Bench.Run("plan", Demo, "--samples", "0", "--compare", "1", "3");
        Assert.True(result.Code == 0, result.Error);
        Assert.Contains("plan 1", result.Out, StringComparison.Ordinal);
        Assert.Contains("plan 3", result.Out, StringComparison.Ordinal);
        Assert.Contains("heat budget used", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_that_is_not_there_and_too_few_samples_are_refused()
    {
        BenchResult missing = Bench.Run("plan", Demo, "--samples", "0", "--why", "20");
        Assert.Equal(2, missing.Code);
        Assert.Contains("there is no plan 20", missing.Error, StringComparison.Ordinal);
        BenchResult few = Bench.Run("plan", Demo, "--samples", "3");
        Assert.Equal(2, few.Code);
        Assert.Contains("--samples must be 0, or 10", few.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_triage_counts_touches_time_bands_and_wires()
    {
        BenchResult result = Bench.Run("triage", Demo, "--pads", "5", "--missing", "1", "--loose", "2", "--json");
        Assert.True(result.Code == 0, result.Error);
        JsonElement json = result.Json();
        Assert.Equal(1, json.GetProperty("wires_certain").GetInt32());
        Assert.True(json.GetProperty("wires_possible").GetInt32() >= 2);
        Assert.Equal(4, json.GetProperty("bands").EnumerateArray().Sum(b => b.GetProperty("pads_central").GetInt32()));
        Assert.True(json.GetProperty("bench_time_least_min").GetDouble() < json.GetProperty("bench_time_most_min").GetDouble());
        Assert.DoesNotContain("probability", result.Out, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_triage_must_be_told_which_pads()
    {
        Assert.Equal(2, Bench.Run("triage", Demo).Code);
        Assert.Equal(2, Bench.Run("triage", Demo, "--pads", "2", "--missing", "3").Code);
    }
}
