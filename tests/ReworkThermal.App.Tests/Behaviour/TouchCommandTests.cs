using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class TouchCommandTests
{
    [Fact]
    public void A_default_that_is_said_gives_what_it_gives_unsaid()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string[] unsaid = ["touch", "log", "--pad", "1", "--purpose", "wick", "--seconds", "4", "--iron", "heavy", "--iron-set", "350", "--at", "2026-03-01T09:00:00Z"];
        BenchResult first = bench.Must(unsaid);
        Assert.Contains("Assumed: the tip is tinned on the joint", first.Out, StringComparison.Ordinal);
        bench.Must("touch", "void", "3", "--reason", "again, with everything said");
        BenchResult said = bench.Must([.. unsaid, "--contact", "tinned", "--side", "bottom"]);
        Assert.DoesNotContain("Assumed:", said.Out, StringComparison.Ordinal);
        Assert.Equal(Costs(first), Costs(said));

        static string Costs(BenchResult result) => result.Out[result.Out.IndexOf("What it cost", StringComparison.Ordinal)..result.Out.IndexOf("Next", StringComparison.Ordinal)];
    }

    [Fact]
    public void How_a_tool_is_used_needs_the_tool()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        BenchResult contact = bench.Run("touch", "log", "--pad", "1", "--purpose", "preheat", "--seconds", "4", "--preheater", "hot-plate", "--preheat-set", "100", "--contact", "tinned");
        Assert.Equal(2, contact.Code);
        Assert.Contains("--contact says how --iron is used", contact.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Seconds_and_settings_are_simulated_and_cost_something()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        JsonElement logged = bench.Json("touch", "log", "--pad", "1", "--purpose", "wick", "--seconds", "5", "--iron", "medium", "--iron-set", "360");
        JsonElement pad = logged.GetProperty("pads")[0];
        Assert.InRange(pad.GetProperty("peak_c").GetDouble(), 100, 360);
        Assert.True(pad.GetProperty("budget_share_after").GetProperty("high").GetDouble() >= pad.GetProperty("budget_share_before").GetProperty("high").GetDouble());
        Assert.Equal("simulated", bench.Json("touch", "list").GetProperty("touches")[0].GetProperty("temperature").GetString());
    }

    [Fact]
    public void A_measured_series_is_used_as_it_is()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string series = bench.Folder.Write("trace.csv", "time_s,temperature_c\n0,23.5\n1.25,187.4\n4,251.125\n");
        bench.Must("touch", "log", "--pad", "1", "--purpose", "mix", "--iron", "medium", "--iron-set", "350", "--series", series);
        JsonElement touch = bench.Json("touch", "list").GetProperty("touches")[0];
        Assert.Equal("measured", touch.GetProperty("temperature").GetString());
        Assert.Equal(4, touch.GetProperty("dwell_s").GetDouble());
        string file = Path.Combine(bench.Folder.Path, "out.json");
        bench.Must("store", "export", file);
        Assert.Contains("\"time_s\":[0,1.25,4],\"temperature_c\":[23.5,187.4,251.125]", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("name at least", "--purpose", "wick", "--seconds", "3")]
    [InlineData("say which tool", "--pad", "1", "--purpose", "wick", "--seconds", "3")]
    [InlineData("say what the touch was for", "--pad", "1", "--seconds", "3", "--iron", "medium", "--iron-set", "350")]
    [InlineData("say how long", "--pad", "1", "--purpose", "wick", "--iron", "medium", "--iron-set", "350")]
    [InlineData("belong together", "--pad", "1", "--purpose", "wick", "--seconds", "3", "--iron", "medium")]
    [InlineData("no iron 'golden'", "--pad", "1", "--purpose", "wick", "--seconds", "3", "--iron", "golden", "--iron-set", "350")]
    [InlineData("no pad 99", "--pad", "99", "--purpose", "wick", "--seconds", "3", "--iron", "medium", "--iron-set", "350")]
    [InlineData("is no time", "--pad", "1", "--purpose", "wick", "--seconds", "3", "--iron", "medium", "--iron-set", "350", "--at", "yesterday")]
    [InlineData("cadmium", "--pad", "1", "--purpose", "mix", "--seconds", "3", "--iron", "medium", "--iron-set", "350", "--added", "Cd50Sn50")]
    [InlineData("--added-mass", "--pad", "1", "--purpose", "mix", "--seconds", "3", "--iron", "medium", "--iron-set", "350", "--added", "Bi58Sn42")]
    [InlineData("decimal point", "--pad", "1", "--purpose", "wick", "--seconds", "3,5", "--iron", "medium", "--iron-set", "350")]
    public void What_cannot_be_logged_is_refused_and_leaves_no_trace(string because, params string[] options)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        BenchResult result = bench.Run(["touch", "log", .. options]);
        Assert.Equal(2, result.Code);
        if (because != "name at least")
        {
            Assert.Contains(because, result.Error, StringComparison.Ordinal);
        }

        Assert.Equal(0, bench.Json("touch", "list").GetProperty("touches").GetArrayLength());
    }

    [Fact]
    public void A_bad_series_is_bad_data_with_line_and_column()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string series = bench.Folder.Write("bad.csv", "time_s,temperature_c\n0,20\n1,hot\n");
        BenchResult result = bench.Run("touch", "log", "--pad", "1", "--purpose", "mix", "--iron", "medium", "--iron-set", "350", "--series", series);
        Assert.Equal(3, result.Code);
        Assert.Contains("line 3", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_void_needs_a_reason_and_stays_readable()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Touch("1", 300, 20);
        double before = Share(bench);
        Assert.Equal(2, bench.Run("touch", "void", "3").Code);
        bench.Must("touch", "void", "3", "--reason", "wrong pad");
        Assert.True(Share(bench) < before);
        JsonElement touch = bench.Json("touch", "list").GetProperty("touches")[0];
        Assert.True(touch.GetProperty("voided").GetBoolean());
        Assert.Equal("wrong pad", touch.GetProperty("void_reason").GetString());
    }

    [Fact]
    public void Without_a_joint_a_touch_is_logged_and_judged_later()
    {
        using JobStoreBench bench = new();
        bench.Must("job", "new", "unknown board");
        bench.Must("job", "pins", "--pinout", "panel-jack-16");
        bench.Must("touch", "log", "--pad", "1", "--purpose", "wick", "--seconds", "5", "--iron", "medium", "--iron-set", "360");
        Assert.Equal(2, bench.Run("budget", "show").Code);
        bench.Must("job", "revise", "--joint", "jack-anchor-six-layer", "--board", "six-layer-controller");
        JsonElement pad = bench.Json("budget", "show", "--pad", "1");
        Assert.Equal(0, pad.GetProperty("touches_not_counted").GetInt32());
        Assert.InRange(pad.GetProperty("peak_c").GetDouble(), 100, 360);
    }

    private static double Share(JobStoreBench bench) =>
        bench.Json("budget", "show", "--pad", "1").GetProperty("budget_share").GetProperty("central").GetDouble();
}
