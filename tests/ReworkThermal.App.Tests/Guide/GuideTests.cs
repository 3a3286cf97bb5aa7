using ReworkThermal.App.Commands;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests.Guide;

/// <summary>The guide is true: each command shown is run, in order and against one job store, and prints what is shown.</summary>
public sealed class GuideTests
{
    private const string Begin = "<!-- verification -->";

    private static readonly string _guide = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "README.md"));

    [Fact]
    public void Every_command_of_the_guide_prints_what_is_shown()
    {
        using TemporaryFolder folder = new();
        IReadOnlyList<GuideExample> examples = GuideExample.In(_guide);
        List<string> differences = [];
        foreach (GuideExample example in examples)
        {
            string printed = Run(folder, example.Words);
            if (example.DifferenceFrom(printed) is { } difference)
            {
                differences.Add($"README.md line {example.Line}, {string.Join(' ', example.Words)}:\n{difference}\nprinted in all:\n{printed}");
            }
        }

        Assert.True(examples.Count >= 10, $"only {examples.Count} commands in the guide");
        Assert.True(differences.Count == 0, string.Join("\n\n", differences));
    }

    [Fact]
    public void The_table_of_the_verification_is_fresh()
    {
        string fresh = Bench.Run("verify", "--markdown").Out.Trim();
        string[] parts = _guide.ReplaceLineEndings("\n").Split(Begin);

        Assert.Equal(3, parts.Length);
        Assert.Equal(fresh, parts[1].Trim());
    }

    private static string Run(TemporaryFolder folder, IReadOnlyList<string> words)
    {
        using StringWriter output = new() { NewLine = "\n" };
        Shell shell = new(output, output, DataRoot.BesideProgram, Width: 100, UseColour: false, ShowsProgress: false, ShowsTrace: false, CancellationToken.None);
        _ = Front.Run([.. words.Select(w => Place(w, folder)), "--store", Path.Combine(folder.Path, "jobs.db")], shell);
        return output.ToString().Replace(folder.Path + Path.DirectorySeparatorChar, string.Empty, StringComparison.Ordinal);
    }

    // Shipped files are beside the tests, files to be written go into the folder.
    private static string Place(string word, TemporaryFolder folder) => word.StartsWith("profiles/", StringComparison.Ordinal)
        ? Path.Combine(AppContext.BaseDirectory, word)
        : Path.GetExtension(word) is ".html" or ".md" or ".svg" or ".csv" ? Path.Combine(folder.Path, word) : word;
}
