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

    [Fact]
    public void A_damaged_store_names_the_command_that_brings_a_backup_back_and_the_command_does()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob("before the damage");
        string copy = Path.Combine(bench.Folder.Path, "copy.db");
        bench.Must("store", "backup", copy);
        byte[] damaged = File.ReadAllBytes(bench.Store);
        damaged.AsSpan(4096, 8192).Fill(0xA5);
        File.WriteAllBytes(bench.Store, damaged);
        BenchResult refused = bench.Run("job", "list");
        Assert.Equal(4, refused.Code);
        Assert.Contains("store restore FILE", refused.Error, StringComparison.Ordinal);
        System.Text.Json.JsonElement restored = bench.Json("store", "restore", copy);
        Assert.Equal(1, restored.GetProperty("jobs").GetInt32());
        Assert.Equal(damaged, File.ReadAllBytes(restored.GetProperty("kept").GetString()!));
        Assert.Contains("before the damage", bench.Must("job", "list").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_backup_is_bad_data_and_the_store_stays()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        BenchResult result = bench.Run("store", "restore", bench.Folder.Write("bad.db", "not a store, but long enough to be looked at as one"));
        Assert.Equal(3, result.Code);
        Assert.Contains("left as it is", result.Error, StringComparison.Ordinal);
        bench.Must("job", "list");
    }
}
