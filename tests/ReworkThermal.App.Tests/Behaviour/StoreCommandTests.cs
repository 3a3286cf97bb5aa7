namespace ReworkThermal.App.Tests.Behaviour;

public sealed class StoreCommandTests
{
    [Fact]
    public void A_store_that_is_not_there_is_store_trouble_for_whoever_only_looks()
    {
        using JobStoreBench bench = new();
        BenchResult result = bench.Run("job", "list");
        Assert.Equal(4, result.Code);
        Assert.Contains("no job store", result.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(bench.Store));
    }

    [Fact]
    public void A_file_that_is_no_store_is_refused_and_left_as_it_is()
    {
        using JobStoreBench bench = new();
        File.WriteAllText(bench.Store, "not a store at all, but long enough to be looked at");
        Assert.Equal(4, bench.Run("job", "new", "x").Code);
        Assert.Equal("not a store at all, but long enough to be looked at", File.ReadAllText(bench.Store));
    }

    [Fact]
    public void Export_then_import_gives_the_same_export()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Touch("1", 245, 8);
        string first = Path.Combine(bench.Folder.Path, "first.json");
        string second = Path.Combine(bench.Folder.Path, "second.json");
        bench.Must("store", "export", first);
        using JobStoreBench other = new();
        Assert.Equal(1, other.Json("store", "import", first).GetProperty("new_jobs").GetInt32());
        other.Must("store", "export", second);
        Assert.Equal(File.ReadAllBytes(first), File.ReadAllBytes(second));
    }

    [Theory]
    [InlineData("export")]
    [InlineData("backup")]
    public void What_is_there_is_not_overwritten_unless_forced(string command)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string file = bench.Folder.Write("precious.txt", "precious");
        BenchResult result = bench.Run("store", command, file);
        Assert.Equal(4, result.Code);
        Assert.Contains("--force", result.Error, StringComparison.Ordinal);
        Assert.Equal("precious", File.ReadAllText(file));
        bench.Must("store", command, file, "--force");
        Assert.NotEqual("precious", File.ReadAllText(file));
    }

    [Fact]
    public void A_backup_is_a_store_and_a_check_says_so()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string copy = Path.Combine(bench.Folder.Path, "copy.db");
        bench.Must("store", "backup", copy);
        Assert.Equal(0, Bench.Run("store", "check", "--store", copy).Code);
        Assert.True(bench.Json("store", "check").GetProperty("sound").GetBoolean());
    }

    [Fact]
    public void A_file_that_cannot_be_imported_is_bad_data()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        BenchResult result = bench.Run("store", "import", bench.Folder.Write("bad.json", "{}"));
        Assert.Equal(3, result.Code);
        Assert.Contains("nothing was changed", result.Error, StringComparison.Ordinal);
    }
}
