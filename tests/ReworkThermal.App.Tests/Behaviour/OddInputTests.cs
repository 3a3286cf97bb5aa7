namespace ReworkThermal.App.Tests.Behaviour;

/// <summary>Words that are nearly right: refused in a sentence of our own, and nothing of them is dropped in silence.</summary>
public sealed class OddInputTests
{
    [Theory]
    [InlineData("entry needs a whole number", "touch", "void", "1,5", "--reason", "x")]
    [InlineData("entry needs a whole number", "touch", "drop", "first", "--reason", "x")]
    [InlineData("--ends needs a whole number", "touch", "log", "--pad", "1", "--ends", "2.0")]
    [InlineData("--awg needs a whole number", "wire", "judge", "--awg", "30.5", "--length", "10", "--current", "1", "--kind", "ptfe")]
    [InlineData("--compare needs a whole number", "plan", "request.toml", "--compare", "1", "x")]
    [InlineData("--touch needs a whole number", "calibrate", "forget", "request.toml", "--touch", "1.5")]
    [InlineData("--number needs a whole number", "job", "accept", "request.toml", "--number", "1.5")]
    public void A_number_that_is_not_whole_is_not_rounded(string because, params string[] words)
    {
        BenchResult result = Bench.Run(words);
        result.MustBeRefused(2, because);
        Assert.DoesNotContain("System.", result.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("request names no file", "plan", "")]
    [InlineData("request names no file", "triage", "", "--pads", "3")]
    [InlineData("case names no file", "heat", "")]
    [InlineData("file names no file", "store", "export", "")]
    [InlineData("--store names no file", "job", "list", "--store", "")]
    [InlineData("--csv names no file", "melt", "Sn63Pb37", "--csv", "")]
    [InlineData("--html names no file", "report", "--html", "")]
    [InlineData("--calibrations names no folder", "calibrate", "show", "request.toml", "--calibrations", "")]
    public void An_empty_name_of_a_file_is_a_usage_mistake(string because, params string[] words) => Bench.Run(words).MustBeRefused(2, because);

    [Fact]
    public void A_folder_in_place_of_a_file_is_named_as_one()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string folder = bench.Folder.Path;
        Bench.Run("heat", folder).MustBeRefused(3, folder, "it is a folder");
        bench.Run("job", "pins", "--from", folder).MustBeRefused(3, folder, "it is a folder");
        bench.Run("report", "--html", folder).MustBeRefused(2, folder, "it is a folder");
        Bench.Run("melt", "Sn63Pb37", "--csv", Path.Combine(folder, "none", "a.csv")).MustBeRefused(2, "there is no folder '" + Path.Combine(folder, "none"));
        Assert.Empty(Directory.GetFiles(folder, "*.part"));
    }

    [Fact]
    public void What_would_have_no_effect_is_refused()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Run("touch", "log", "--pad", "1", "--purpose", "mix", "--iron", "medium", "--iron-set", "350", "--seconds", "3", "--added-mass", "5")
            .MustBeRefused(2, "--added-mass");
        bench.Run("triage", Bench.DemoRequest, "--job", "bench job", "--missing", "2").MustBeRefused(2, "--missing and --loose go with --pads");
        bench.Run("budget", "show", "--iron", "medium", "--iron-set", "350").MustBeRefused(2, "name it with --pad");
        bench.Run("budget", "show", "--now", "200").MustBeRefused(2, "name it with --pad");
        bench.Run("checks", "read", "--ohms", "2", "--over-range").MustBeRefused(2, "not both");
        Bench.Run("plan", Bench.DemoRequest, "--why", "1", "--compare", "1", "2").MustBeRefused(2, "either --why");
        Bench.Run("calibrate", "add", Bench.DemoRequest, "--iron", "heavy", "--set", "350", "--flowed", "4", "--reading", "100", "--calibrations", bench.Folder.Path)
            .MustBeRefused(2, "--probe");
    }

    [Theory]
    [InlineData("no-such-heater", "100", "--preheater 'no-such-heater' is not known")]
    [InlineData("hot-plate", "900", "--preheat-set must lie between")]
    public void A_heater_that_cannot_be_does_not_put_the_blame_on_the_irons(string heater, string set, string because)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Run("wire", "plan", "--pad", "1", "--preheater", heater, "--preheat-set", set).MustBeRefused(2, because);
    }

    [Fact]
    public void Of_several_pads_all_are_recorded_or_none()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        int before = Entries(bench);
        bench.Run("job", "look", "sound", "--pad", "1,2,99").MustBeRefused(2, "no pad 99");
        Assert.Equal(before, Entries(bench));
        Assert.Equal(2, bench.Json("job", "look", "sound", "--pad", "1,2").GetProperty("recorded").GetArrayLength());
        Assert.Equal(1, bench.Json("checks", "pass", "--number", "1,1").GetProperty("recorded").GetArrayLength());
        Assert.Equal(before + 3, Entries(bench));
    }

    private static int Entries(JobStoreBench bench) => bench.Json("job", "show").GetProperty("entries").GetInt32();
}
