using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class CalibrateCommandTests
{
    private static string Demo => Bench.DemoRequest;

    [Fact]
    public void A_touch_is_added_shown_used_by_the_plan_and_forgotten()
    {
        using TemporaryFolder folder = new();
        string kept = Path.Combine(folder.Path, "calibrations");
        JsonElement added = Run("add", Demo, "--iron", "heavy", "--set", "350", "--preheater", "hot-plate", "--board", "150", "--flowed", "4.2", "--calibrations", kept).Json();
        JsonElement touch = Assert.Single(added.GetProperty("touches").EnumerateArray());
        double before = Math.Abs(Math.Log(touch.GetProperty("expected_before_s").GetDouble() / 4.2));
        double after = Math.Abs(Math.Log(touch.GetProperty("expected_after_s").GetDouble() / 4.2));
        Assert.True(after < before);
        Assert.Equal(3, added.GetProperty("inputs").GetArrayLength());
        Assert.Equal(added.GetProperty("inputs").ToString(), Run("show", Demo, "--calibrations", kept).Json().GetProperty("inputs").ToString());

        BenchResult plan = Bench.Run("plan", Demo, "--samples", "0", "--calibrations", kept);
        Assert.Contains("calibrated by 1 observed touches", plan.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);

        Assert.Equal(0, Run("forget", Demo, "--calibrations", kept).Code);
        Assert.Equal(1, Run("show", Demo, "--calibrations", kept).Code);
    }

    [Theory]
    [InlineData("--flowed SECONDS", "--iron", "medium", "--set", "340")]
    [InlineData("--preheater and --board", "--iron", "medium", "--set", "340", "--board", "120", "--flowed", "3")]
    [InlineData("--iron 'huge' is not known", "--iron", "huge", "--set", "340", "--flowed", "3")]
    [InlineData("--set must lie between", "--iron", "medium", "--set", "470", "--flowed", "3")]
    [InlineData("--probe 'nose' is not known", "--iron", "medium", "--set", "340", "--probe", "nose", "--after", "3", "--reading", "100")]
    public void What_cannot_be_meant_is_refused(string because, params string[] options)
    {
        using TemporaryFolder folder = new();
        Bench.Run(["calibrate", "add", Demo, .. options, "--calibrations", folder.Path]).MustBeRefused(2, because);
    }

    private static BenchResult Run(params string[] words) => Bench.Run(["calibrate", .. words, "--json"]);
}
