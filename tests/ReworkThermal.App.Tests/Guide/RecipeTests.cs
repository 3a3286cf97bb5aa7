using System.Text.RegularExpressions;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests.Guide;

/// <summary>The contributor's guide is true: each step that adds data is done to a copy of the data, which is then checked and used.</summary>
public sealed partial class RecipeTests
{
    [Fact]
    public void Every_step_of_the_guide_leaves_data_in_order_that_can_be_used()
    {
        using TemporaryFolder copy = TemporaryFolder.WithData();
        MatchCollection steps = Step().Matches(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "DEVELOPERS.md")).ReplaceLineEndings("\n"));
        foreach (Match step in steps)
        {
            string name = step.Groups["name"].Value;
            string before = step.Groups["how"].Value == "append" ? File.ReadAllText(Path.Combine(copy.Path, name)) + "\n" : string.Empty;
            copy.Write(name, before + step.Groups["text"].Value);
        }

        Assert.Equal(6, steps.Count);
        DataRoot root = new(copy.Path);
        BenchResult check = Bench.Run(root, "data", "check");
        Assert.True(check.Code == 0, check.Out + check.Error);
        Assert.Contains("alloys/dilution/bi57sn43-shop.toml", check.Out, StringComparison.Ordinal);

        BenchResult dilution = Bench.Run(root, "dilute", "--joint", "jack-anchor-two-layer", "--board", "two-layer-relay", "--with", "Bi57Sn43-shop", "--ratio", "0.3");
        Assert.True(dilution.Code == 0, dilution.Out + dilution.Error);
    }

    [GeneratedRegex(@"```toml\n# (?<how>file|append): (?<name>\S+)\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Step();
}
