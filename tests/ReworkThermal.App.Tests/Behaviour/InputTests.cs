using System.Diagnostics;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests.Behaviour;

/// <summary>What commands read: plain files of a bearable size only, and nothing waits on a pipe.</summary>
public sealed class InputTests
{
    public static TheoryData<string[], int> Readers { get; } = new()
    {
        { ["plan", "FILE"], 3 },
        { ["heat", "FILE"], 3 },
        { ["job", "pins", "--from", "FILE"], 3 },
        { ["touch", "log", "--pad", "1", "--purpose", "other", "--iron", "medium", "--iron-set", "350", "--series", "FILE"], 3 },
        { ["store", "import", "FILE"], 3 },
        { ["job", "list", "--store", "FILE"], 4 },
    };

    [Theory]
    [MemberData(nameof(Readers))]
    public void What_is_no_plain_file_or_too_large_is_refused_at_once(string[] words, int code)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string huge = Path.Combine(bench.Folder.Path, "huge");
        using (FileStream file = File.Create(huge))
        {
            file.SetLength(5L << 30);
        }

        List<(string Path, string Said)> odd = [(huge, "5120 MiB"), (Directory.CreateDirectory(Path.Combine(bench.Folder.Path, "folder")).FullName, "is a folder")];
        if (!OperatingSystem.IsWindows())
        {
            odd.Add((Pipe(bench.Folder.Path), "a pipe, a device or a socket"));
            odd.Add(("/dev/zero", "a pipe, a device or a socket"));
        }

        foreach ((string path, string said) in odd)
        {
            string[] line = [.. words.Select(w => w == "FILE" ? path : w)];
            BenchResult result = line.Contains("--store") ? Bench.Run(line) : bench.Run(line);
            result.MustBeRefused(code, said);
        }
    }

    [Fact]
    public void An_own_file_that_cannot_be_read_stops_only_what_needs_it()
    {
        using TemporaryFolder own = new();
        own.Write("alloys/dilution/mine.toml", "name = \"ShopWire\"\ncomposition = 7\n");
        own.Write("profiles/irons/huge.toml", new string('#', (1 << 20) + 1));
        string board = File.ReadAllText(Path.Combine(DataRoot.BesideProgram.Profiles, "boards", "six-layer-controller.toml"));
        own.Write("profiles/boards/six-layer-controller.toml", board + "\nsurprise = 1\n");
        if (!OperatingSystem.IsWindows())
        {
            _ = Pipe(Path.Combine(own.Path, "profiles", "irons"), "pipe.toml");
        }

        DataRoot Data() => new(DataRoot.BesideProgram.Folder, own.Path);
        BenchResult melt = Bench.Run(Data(), "melt", "Sn63Pb37");
        Assert.Equal(0, melt.Code);
        Assert.Matches("left out: .*mine.toml, line 2, composition: must be text", melt.Error);
        Assert.DoesNotContain("Your own data", melt.Out, StringComparison.Ordinal);
        BenchResult needed = Bench.Run(Data(), "melt", "ShopWire");
        needed.MustBeRefused(2, "ShopWire", "left out: ", "mine.toml");
        BenchResult other = Bench.Run(Data(), "dilute", "--joint", "jack-anchor-two-layer", "--board", "two-layer-sensor", "--with", "Bi58Sn42", "--ratio", "0.3");
        Assert.True(other.Code == 0, other.Error);
        Assert.Contains("huge.toml: it has ", other.Error, StringComparison.Ordinal);
        BenchResult stands = Bench.Run(Data(), "dilute", "--joint", "jack-anchor-six-layer", "--board", "six-layer-controller", "--with", "Bi58Sn42", "--ratio", "0.3");
        Assert.NotEqual(0, stands.Code);
        Assert.Contains("surprise", stands.Error, StringComparison.Ordinal);
        BenchResult check = Bench.Run(Data(), "data", "check");
        Assert.Equal(3, check.Code);
        Assert.Contains("mine.toml", check.Out, StringComparison.Ordinal);
        Assert.Contains("surprise", check.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_complaints_of_a_file_are_shown_and_the_rest_is_counted()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string pins = bench.Folder.Write("pins.csv", "number,name,row,position,duty\n" + string.Concat(Enumerable.Range(1, 30).Select(i => $"{i},a,1,{i},{new string('x', 1000)}\n")));
        BenchResult result = bench.Run("job", "pins", "--from", pins);
        result.MustBeRefused(3, "30 complaints in all; the first 10 are shown");
        string[] lines = result.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(11, lines.Length);
        Assert.All(lines, l => Assert.DoesNotContain(new string('x', 201), l, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("[", "]", "nested too deeply")]
    [InlineData("{a=", "}", "nested too deeply")]
    [InlineData("[{a=", "}]", "nested too deeply")]
    public void Deep_nesting_is_refused_with_a_sentence(string open, string close, string said)
    {
        using TemporaryFolder folder = new();
        const int Depth = 100_000;
        string path = folder.Write("deep.toml", "a = " + string.Concat(Enumerable.Repeat(open, Depth)) + "1" + string.Concat(Enumerable.Repeat(close, Depth)) + "\n");
        Bench.Run("plan", path).MustBeRefused(3, "deep.toml", said);
        Bench.Run("plan", folder.Write("keys.toml", string.Join('.', Enumerable.Repeat("a", Depth)) + " = 1\n")).MustBeRefused(3, "keys.toml, line 1", said);
        Bench.Run("plan", folder.Write("table.toml", "[" + string.Join('.', Enumerable.Repeat("a", Depth)) + "]\n")).MustBeRefused(3, "table.toml, line 1", said);
    }

    [Fact]
    public void Deep_nesting_of_an_export_is_refused_with_a_sentence()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Run("store", "import", bench.Folder.Write("deep.json", new string('[', 100_000))).MustBeRefused(3, "nested deeper than 64", "nothing was changed");
    }

    [Theory]
    [InlineData("\"base_solder\":\"Sn96.5Ag3Cu0.5\"", "\"base_solder\":\"chewing gum\"", "its base solder is no composition")]
    [InlineData("\"number\":1,\"at\":\"2", "\"number\":1,\"at\":\"1", "its year must lie between 2000 and 2200")]
    [InlineData("\"started_at\":\"2026", "\"started_at\":\"2999", "its year must lie between 2000 and 2200; got 2999")]
    public void An_import_of_what_the_program_would_not_record_is_refused(string right, string wrong, string said)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Touch("1", 245, 8);
        string file = Path.Combine(bench.Folder.Path, "jobs.json");
        bench.Must("store", "export", file);
        string text = File.ReadAllText(file);
        Assert.Contains(right, text, StringComparison.Ordinal);
        using JobStoreBench other = new();
        other.Run("store", "import", other.Folder.Write("wrong.json", text.Replace(right, wrong, StringComparison.Ordinal))).MustBeRefused(3, said, "nothing was changed");
        Assert.Equal(1, other.Json("store", "import", file).GetProperty("new_jobs").GetInt32());
    }

    private static string Pipe(string folder, string name = "pipe")
    {
        string path = Path.Combine(folder, name);
        using Process process = Process.Start("mkfifo", [path]);
        process.WaitForExit();
        return path;
    }
}
