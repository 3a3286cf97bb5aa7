namespace ReworkThermal.App.Tests.Behaviour;

public sealed class FrontTests
{
    [Fact]
    public void Without_words_the_help_is_shown()
    {
        BenchResult result = Bench.Run();
        Assert.Equal(0, result.Code);
        Assert.Contains("data", result.Out, StringComparison.Ordinal);
        Assert.Empty(result.Error);
    }

    [Theory]
    [InlineData("frobnicate")]
    [InlineData("data", "chekc")]
    [InlineData("data", "check", "--no-such-option")]
    [InlineData("data")]
    public void An_unknown_command_or_option_is_a_usage_mistake(params string[] words)
    {
        BenchResult result = Bench.Run(words);
        Assert.Equal(2, result.Code);
        Assert.Empty(result.Out);
        Assert.StartsWith("rework-thermal: ", result.Error, StringComparison.Ordinal);
        Assert.Contains("--help", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_complaint_carries_no_control_characters()
    {
        BenchResult result = Bench.Run("\u001b[31mred\u202e");
        Assert.Equal(2, result.Code);
        Assert.DoesNotContain(result.Error, c => c is '\u001b' or '\u202e');
    }

    [Fact]
    public void Words_that_start_with_an_at_sign_are_not_read_as_files()
    {
        using TemporaryFolder folder = new();
        string path = folder.Write("words.txt", "data\ncheck\n");
        Assert.Equal(2, Bench.Run("@" + path).Code);
    }
}
