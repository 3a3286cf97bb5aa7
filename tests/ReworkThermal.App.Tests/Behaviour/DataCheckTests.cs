using System.Text.Json;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class DataCheckTests
{
    [Fact]
    public void The_data_that_came_with_the_program_is_in_order()
    {
        BenchResult result = Bench.Run("data", "check");
        Assert.True(result.Code == 0, result.Out);
        Assert.Contains("0 failed, 0 broken", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_residuals_of_every_fit_are_printed()
    {
        JsonElement[] fits = [.. Bench.Run("data", "check", "--json").Json().GetProperty("lines").EnumerateArray()
            .Where(l => l.GetProperty("subject").GetString()!.StartsWith("fit: ", StringComparison.Ordinal))];
        Assert.Equal(53, fits.Length);
        Assert.All(fits, l => Assert.StartsWith("residual ", l.GetProperty("remark").GetString(), StringComparison.Ordinal));
    }

    [Fact]
    public void Every_file_has_a_line()
    {
        int files = new[] { DataRoot.BesideProgram.Alloys, DataRoot.BesideProgram.Profiles }
            .Sum(folder => Directory.EnumerateFiles(folder, "*.toml", SearchOption.AllDirectories).Count());
        JsonElement json = Bench.Run("data", "check", "--json").Json();
        int named = json.GetProperty("lines").EnumerateArray().Select(l => l.GetProperty("file").GetString()).Distinct().Count();
        Assert.Equal(files, named);
        Assert.True(json.GetProperty("all_passed").GetBoolean());
    }

    [Fact]
    public void An_unlisted_source_is_a_failed_check()
    {
        using TemporaryFolder folder = TemporaryFolder.WithData();
        folder.Write("alloys/stray/note.toml", "[figure]\nsource = \"Nobody0000\"\n");
        BenchResult result = Bench.Run(new DataRoot(folder.Path), "data", "check");
        Assert.Equal(1, result.Code);
        Assert.Contains("'Nobody0000'", result.Out, StringComparison.Ordinal);
        Assert.Contains("line 2", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Malformed_TOML_is_bad_data_with_its_line()
    {
        using TemporaryFolder folder = TemporaryFolder.WithData();
        folder.Write("alloys/solders/bad.toml", "name = \"bad\"\ncomposition = \"Sn100\nfamily = 3\n");
        BenchResult result = Bench.Run(new DataRoot(folder.Path), "data", "check");
        Assert.Equal(3, result.Code);
        Assert.Contains("alloys/solders/bad.toml", result.Out, StringComparison.Ordinal);
        Assert.Contains("line 2", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_folder_is_bad_data()
    {
        using TemporaryFolder folder = new();
        Assert.Equal(3, Bench.Run(new DataRoot(folder.Path), "data", "check").Code);
    }
}
