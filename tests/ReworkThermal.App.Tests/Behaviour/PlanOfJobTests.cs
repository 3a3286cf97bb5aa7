using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

/// <summary>Plans and triage for the pads of a job in a real store.</summary>
public sealed class PlanOfJobTests
{
    private static string Demo => Bench.DemoRequest;

    [Fact]
    public void A_plan_for_a_pad_starts_from_what_the_pad_has_had()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        for (int i = 0; i < 2; i++)
        {
            bench.Touch("3", 250, 8, FormattableString.Invariant($"2026-03-01T09:{10 + i}:00Z"));
        }

        double used = BudgetOf(bench, "3");
        JsonElement touched = First(bench.Json("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "3"));
        JsonElement fresh = First(bench.Json("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "4"));
        Assert.Equal(used, Share(touched, "budget_share_now"), 4);
        Assert.True(Share(touched, "budget_share_now") > Share(fresh, "budget_share_now") + 0.05);
        Assert.True(Share(touched, "budget_share_after") > Share(touched, "budget_share_now"));
    }

    [Fact]
    public void The_text_names_the_pad_and_its_touches_and_why_names_the_store()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Touch("3", 290, 8);
        Assert.Contains("pad 3: logged touches 1", bench.Must("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "3").Out, StringComparison.Ordinal);
        Assert.Contains("the job store", bench.Must("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "3", "--why", "1").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_joint_that_the_job_has_mixed_or_emptied_is_said_to_differ_from_the_request()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Touch("3", 290, 8, "2026-03-01T09:00:00Z", "--added", "Bi58Sn42", "--added-mass", "5");
        Assert.Matches(@"the logged touches\s+leave\s+14\.6\s+mg\s+of", bench.Must("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "3").Out);
        Assert.DoesNotMatch(@"the logged touches\s+leave", bench.Must("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "4").Out);
    }

    [Theory]
    [InlineData("--job", "bench job", "--pad", "99", "99")]
    [InlineData("--job", "no such job", "--pad", "3", "no such job")]
    public void A_pad_or_job_that_is_not_there_is_refused(string job, string label, string pad, string name, string said)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        BenchResult result = bench.Run("plan", Demo, "--samples", "0", job, label, pad, name);
        Assert.Equal(2, result.Code);
        Assert.Contains(said, result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pad_without_a_job_and_a_job_about_another_joint_are_refused()
    {
        using JobStoreBench bench = new();
        bench.Must("job", "new", "other", "--joint", "jack-anchor-two-layer", "--board", "two-layer-sensor");
        Assert.Contains("go together", bench.Run("plan", Demo, "--pad", "3").Error, StringComparison.Ordinal);
        Assert.Contains("is about the joint", bench.Run("plan", Demo, "--job", "other", "--pad", "1").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_triage_of_a_job_takes_pads_states_and_touches_from_the_register()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Must("job", "look", "missing", "--pad", "1,2");
        bench.Must("job", "look", "loose", "--pad", "5");
        for (int i = 0; i < 4; i++)
        {
            bench.Touch("3", 330, 10, FormattableString.Invariant($"2026-03-01T09:{10 + i}:00Z"));
        }

        JsonElement json = bench.Json("triage", Demo, "--job", "bench job");
        JsonElement[] pads = [.. json.GetProperty("pads").EnumerateArray()];
        Assert.Equal(["missing", "missing"], pads.Take(2).Select(p => p.GetProperty("state").GetString()));
        Assert.Equal("loose", pads.Single(p => p.GetProperty("pad").GetString() == "5").GetProperty("state").GetString());
        string[] bands = ["low", "raised", "high", "stop"];
        int Before(string pad) => Array.IndexOf(bands, pads.Single(p => p.GetProperty("pad").GetString() == pad).GetProperty("band_before").GetString());
        Assert.True(Before("3") > Before("4"), $"{Before("3")} {Before("4")}");
        Assert.True(json.GetProperty("wires_certain").GetInt32() >= 1);
    }

    [Fact]
    public void A_triage_of_a_job_that_is_not_there_is_refused()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        BenchResult result = bench.Run("triage", Demo, "--job", "no such job");
        Assert.Equal(2, result.Code);
        Assert.Contains("no such job", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pad_that_the_job_has_spent_gets_no_plan_unless_more_is_allowed()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        for (int i = 0; i < 5; i++)
        {
            bench.Touch("3", 290, 8, FormattableString.Invariant($"2026-03-01T09:{10 + i}:00Z"));
        }

        BenchResult refused = bench.Run("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "3");
        Assert.Equal(1, refused.Code);
        Assert.Contains("bring the pad's heat budget from", refused.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        string allowing = bench.Folder.Write("allowing.toml", File.ReadAllText(Demo) + "most_budget_after = \"300 %\"\n");
        JsonElement plan = First(bench.Json("plan", allowing, "--samples", "0", "--job", "bench job", "--pad", "3"));
        Assert.InRange(Share(plan, "budget_share_after"), 1, 3);
    }

    [Fact]
    public void The_plan_that_is_accepted_is_the_one_that_was_shown_for_the_pad_and_the_taught_bench()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string taught = Path.Combine(bench.Folder.Path, "taught");
        Assert.Equal(0, Bench.Run("calibrate", "add", Demo, "--iron", "heavy", "--set", "350", "--preheater", "hot-plate", "--board", "150", "--flowed", "4.2", "--calibrations", taught).Code);
        bench.Touch("3", 290, 8);
        JsonElement shown = bench.Json("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "3", "--calibrations", taught).GetProperty("plans")[1];
        bench.Must("job", "accept", Demo, "--number", "2", "--pad", "3", "--calibrations", taught);
        string kept = bench.Json("job", "show").GetProperty("plan").GetString()!;
        Assert.Contains(FormattableString.Invariant($"hold {shown.GetProperty("dwell_s").GetDouble():0.#} s"), kept, StringComparison.Ordinal);
        Assert.Contains(shown.GetProperty("alloy").GetString()!, kept, StringComparison.Ordinal);
        JsonElement untaught = bench.Json("plan", Demo, "--samples", "0", "--job", "bench job", "--pad", "3", "--calibrations", Path.Combine(bench.Folder.Path, "none")).GetProperty("plans")[1];
        Assert.NotEqual(shown.GetProperty("dwell_s").GetDouble(), untaught.GetProperty("dwell_s").GetDouble());
    }

    [Fact]
    public void A_surface_joint_is_refused_when_a_plan_for_it_is_accepted()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string surface = bench.Folder.Write("surface.toml", File.ReadAllText(Demo).Replace("\"jack-anchor-six-layer\"", "\"terminal-pad-six-layer\"", StringComparison.Ordinal));
        BenchResult refused = bench.Run("job", "accept", surface);
        Assert.NotEqual(0, refused.Code);
        Assert.Contains("through-hole", refused.Error, StringComparison.Ordinal);
    }

    private static JsonElement First(JsonElement json) => json.GetProperty("plans")[0];

    private static double Share(JsonElement plan, string field) => plan.GetProperty(field).GetProperty("central").GetDouble();

    private static double BudgetOf(JobStoreBench bench, string pad) => Share(bench.Json("budget", "show", "--job", "bench job", "--pad", pad), "budget_share");
}
