using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class ChecksCommandTests
{
    [Fact]
    public void The_guide_leads_through_the_list_until_everything_is_proven()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Touch("1", 245, 5);
        JsonElement list = bench.Json("checks", "list");
        int count = list.GetProperty("checks").GetArrayLength();
        Assert.Equal(count, list.GetProperty("open").GetInt32());
        JsonElement first = bench.Json("checks", "next").GetProperty("next");
        Assert.Equal(1, first.GetProperty("number").GetInt32());
        bench.Must("checks", "pass", "--ohms", "0.4");
        Assert.Equal(2, bench.Json("checks", "next").GetProperty("next").GetProperty("number").GetInt32());
        bench.Must("checks", "pass", "--number", FormattableString.Invariant($"2-{count}"));
        Assert.True(bench.Json("checks", "list").GetProperty("proven").GetBoolean());
        Assert.Contains("report", bench.Json("job", "show").GetProperty("next").GetString(), StringComparison.Ordinal);
        Assert.Contains("has been probed", bench.Run("checks", "pass").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fail_leads_back_to_its_pin_and_answers_no()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Must("checks", "read", "--number", "1", "--ohms", "40");
        BenchResult result = bench.Run("checks", "list", "--json");
        Assert.Equal(1, result.Code);
        Assert.Equal("1", result.Json().GetProperty("suspect_pins")[0].GetString());
        Assert.Contains("go back to pad 1", bench.Json("job", "show").GetProperty("next").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_is_judged_by_what_is_expected()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        JsonElement[] checks = [.. bench.Json("checks", "list").GetProperty("checks").EnumerateArray()];
        string Number(string expected) => FormattableString.Invariant($"{checks.First(c => c.GetProperty("expected").GetString()!.StartsWith(expected, StringComparison.Ordinal)).GetProperty("number").GetInt32()}");
        Assert.Contains("passed", bench.Must("checks", "read", "--number", Number("conducts"), "--ohms", "0.3").Out, StringComparison.Ordinal);
        Assert.Contains("FAILED", bench.Must("checks", "read", "--number", Number("open"), "--ohms", "0.3").Out, StringComparison.Ordinal);
        Assert.Contains("passed", bench.Must("checks", "read", "--number", Number("open"), "--over-range").Out, StringComparison.Ordinal);
        Assert.Equal(2, bench.Run("checks", "read").Code);
        Assert.Equal(2, bench.Run("checks", "pass", "--number", "1-9999").Code);
    }

    [Fact]
    public void A_later_touch_asks_for_its_pins_again_and_for_no_others()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        int count = bench.Json("checks", "list").GetProperty("checks").GetArrayLength();
        bench.Must("checks", "pass", "--number", FormattableString.Invariant($"1-{count}"));
        bench.Touch("5", 245, 5);
        JsonElement[] again = [.. bench.Json("checks", "list").GetProperty("checks").EnumerateArray().Where(c => c.GetProperty("standing").GetString() == "probe again")];
        Assert.NotEmpty(again);
        Assert.All(again, c => Assert.Contains("5", c.GetProperty("pins").EnumerateArray().Select(p => p.GetString())));
    }
}
