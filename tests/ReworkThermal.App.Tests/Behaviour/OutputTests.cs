using System.Diagnostics;
using ReworkThermal.App.Commands;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests.Behaviour;

/// <summary>What commands write never costs anybody a file: neither the store, nor an input, nor what was there before.</summary>
public sealed class OutputTests
{
    private static readonly string[] _beside = ["", "-wal", "-shm", "-journal"];

    public static TheoryData<string[]> Writers { get; } = new(
        ["melt", "Sn63Pb37", "--csv", "FILE"],
        ["store", "backup", "FILE"],
        ["store", "export", "FILE"],
        ["report", "--html", "FILE"],
        ["report", "--markdown", "FILE"],
        ["job", "pins", "--to", "FILE"]);

    [Theory]
    [MemberData(nameof(Writers))]
    public void The_store_and_what_belongs_to_it_are_never_written(string[] words)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string linked = Path.Combine(bench.Folder.Path, "by-folder");
        Directory.CreateSymbolicLink(linked, bench.Folder.Path);
        File.CreateSymbolicLink(Path.Combine(bench.Folder.Path, "by-link"), bench.Store);
        HardLink(bench.Store, Path.Combine(bench.Folder.Path, "by-hard-link"));
        string[] names =
        [
            .. _beside.Select(b => bench.Store + b),
            Path.Combine(linked, "jobs.db"),
            Path.Combine(bench.Folder.Path, "..", Path.GetFileName(bench.Folder.Path), "jobs.db"),
            Path.GetRelativePath(Environment.CurrentDirectory, bench.Store),
            Path.Combine(bench.Folder.Path, "by-link"),
            Path.Combine(bench.Folder.Path, "by-hard-link"),
        ];
        byte[] before = File.ReadAllBytes(bench.Store);
        foreach (string name in names)
        {
            foreach (string[] more in new[] { [], new[] { "--force" } })
            {
                BenchResult result = bench.Run([.. words.Select(w => w == "FILE" ? name : w), .. more]);
                Assert.True(result.Code is 2 or 4, $"{name}: {result.Code} {result.Out}{result.Error}");
                Assert.Contains("left as it is", result.Error, StringComparison.Ordinal);
                Assert.Equal(before, File.ReadAllBytes(bench.Store));
            }
        }

        Assert.Equal(0, bench.Run("store", "check").Code);
        Assert.DoesNotContain(Directory.GetFiles(bench.Folder.Path), f => f.EndsWith(".part", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("-wal")]
    [InlineData("-shm")]
    public void A_store_of_another_run_is_replaced_by_nothing_but_a_backup(string ending)
    {
        using JobStoreBench other = new JobStoreBench().WithDemoJob();
        string file = other.Store + ending;
        if (ending.Length > 0)
        {
            File.WriteAllText(file, "left by a crash");
        }

        byte[] before = File.ReadAllBytes(file);
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        foreach (string[] words in new string[][] { ["melt", "Sn63Pb37", "--csv", file], ["store", "export", file], ["report", "--html", file], ["job", "pins", "--to", file] })
        {
            BenchResult refused = bench.Run([.. words, "--force"]);
            Assert.True(refused.Code is 2 or 4, refused.Error);
            Assert.Contains("left as it is", refused.Error, StringComparison.Ordinal);
            Assert.Equal(before, File.ReadAllBytes(file));
        }

        if (ending.Length == 0)
        {
            bench.Must("store", "backup", file, "--force");
            Assert.NotEqual(before, File.ReadAllBytes(file));
        }
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void What_is_there_is_replaced_only_when_forced_and_only_a_plain_file(string[] words)
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string file = bench.Folder.Write("precious", "precious");
        string[] line = [.. words.Select(w => w == "FILE" ? file : w)];
        BenchResult refused = bench.Run(line);
        Assert.True(refused.Code is 2 or 4, refused.Error);
        Assert.Contains("--force", refused.Error, StringComparison.Ordinal);
        Assert.Equal("precious", File.ReadAllText(file));
        bench.Must([.. line, "--force"]);
        Assert.NotEqual("precious", File.ReadAllText(file));

        string target = bench.Folder.Write("target", "precious");
        string link = Path.Combine(bench.Folder.Path, "link");
        File.CreateSymbolicLink(link, target);
        Assert.NotEqual(0, bench.Run([.. words.Select(w => w == "FILE" ? link : w), "--force"]).Code);
        Assert.Equal("precious", File.ReadAllText(target));
        Assert.NotNull(new FileInfo(link).LinkTarget);
        string folder = Directory.CreateDirectory(Path.Combine(bench.Folder.Path, "folder")).FullName;
        Assert.NotEqual(0, bench.Run([.. words.Select(w => w == "FILE" ? folder : w), "--force"]).Code);
        if (!OperatingSystem.IsWindows())
        {
            Assert.NotEqual(0, bench.Run([.. words.Select(w => w == "FILE" ? Pipe(bench.Folder) : w), "--force"]).Code);
        }
    }

    [Fact]
    public void Figures_are_written_over_no_input_and_both_or_none()
    {
        using TemporaryFolder folder = new();
        string heat = folder.Write("case.toml", File.ReadAllText(Path.Combine(DataRoot.BesideProgram.Profiles, "cases", "slab-dipped.toml")));
        string text = File.ReadAllText(heat);
        Bench.Run("heat", heat, "--csv", heat, "--force").MustBeRefused(2, "read by this command");
        Assert.Equal(text, File.ReadAllText(heat));
        string csv = Path.Combine(folder.Path, "a.csv");
        string own = folder.Write("own/alloys/dilution/mine.toml", "name = \"x\"");
        DataRoot data = new(DataRoot.BesideProgram.Folder, Path.Combine(folder.Path, "own"));
        Assert.Equal(2, Bench.Run(data, "melt", "Sn63Pb37", "--csv", own, "--force").Code);
        Assert.Equal("name = \"x\"", File.ReadAllText(own));
        string svg = folder.Write("a.svg", "there");
        Assert.Equal(2, Bench.Run("melt", "Sn63Pb37", "--csv", csv, "--plot", svg).Code);
        Assert.False(File.Exists(csv));
        Bench.Run("melt", "Sn63Pb37", "--csv", Path.Combine(folder.Path, "b.svg"), "--plot", Path.Combine(folder.Path, ".", "b.svg")).MustBeRefused(2, "named for two files");
    }

    [Fact]
    public void An_answer_that_cannot_be_written_has_a_code_of_its_own_and_says_what_was_kept()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        (int code, string error) = Lost(byReader: false, "job", "note", "five volts are there", "--store", bench.Store);
        Assert.Equal(74, code);
        Assert.Contains("standard output cannot be written: no room. Recorded as entry 3", error, StringComparison.Ordinal);
        Assert.Contains("five volts are there", bench.Must("job", "show").Out, StringComparison.Ordinal);
        (code, error) = Lost(byReader: false, "melt", "Sn63Pb37");
        Assert.Equal(74, code);
        Assert.Contains("No entry was recorded.", error, StringComparison.Ordinal);
        Assert.Equal((74, string.Empty), Lost(byReader: true, "melt", "Sn63Pb37"));
        Assert.Contains("Recorded as entry 4", Lost(byReader: true, "job", "note", "again", "--store", bench.Store).Error, StringComparison.Ordinal);
        Assert.Equal(74, Lost(byReader: false, "--help").Code);
    }

    private static (int Code, string Error) Lost(bool byReader, params string[] words)
    {
        using LostWriter output = new(byReader);
        using StringWriter error = new() { NewLine = "\n" };
        Shell shell = new(output, error, DataRoot.BesideProgram, Width: 100, UseColour: false, ShowsProgress: false, ShowsTrace: false, CancellationToken.None);
        return (Front.Run(words, shell), error.ToString());
    }

    private static void HardLink(string file, string link)
    {
        using Process process = OperatingSystem.IsWindows()
            ? Process.Start("cmd.exe", ["/c", "mklink", "/H", link, file])
            : Process.Start("ln", [file, link]);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }

    private static string Pipe(TemporaryFolder folder)
    {
        string path = Path.Combine(folder.Path, Path.GetRandomFileName());
        using Process process = Process.Start("mkfifo", [path]);
        process.WaitForExit();
        return path;
    }

    /// <summary>A standard output that fails when it is flushed, as one with a buffer does, and once only.</summary>
    private sealed class LostWriter(bool byReader) : StringWriter
    {
        private bool _lost;

        public override void Flush()
        {
            if (!_lost && GetStringBuilder().Length > 0)
            {
                _lost = true;
                throw new OutputLostException("no room", byReader);
            }
        }
    }
}
