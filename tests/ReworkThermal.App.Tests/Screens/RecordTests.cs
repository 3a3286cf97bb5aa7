using System.Text.Json;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Data.Store;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>The record.</summary>
public sealed class RecordTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void An_entry_is_voided_with_a_reason_and_stays_readable(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.WithJob().Keys(Key.D5, Key.N).Fill("wrong board").Keys(Key.Home, Key.V, Key.Enter);
        Assert.Contains("the record needs a reason", screen.Screen, StringComparison.Ordinal);
        screen.Fill("taken from another job");
        Assert.Empty(screen.Stored.Notes);
        Assert.Contains("VOID note: wrong board", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.CursorDown);
        Assert.Contains("taken from another job | note: wrong board", screen.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_voided_is_said()
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob().Keys(Key.D5, Key.End, Key.V).Type("try").Keys(Key.Enter).Until("Not kept: entry 1 cannot be voided");
        Assert.Contains("try", screen.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Checks_are_judged_and_get_readings(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.WithJob().Keys(Key.D5, Key.C);
        Assert.Contains("pin 1 conducts to VBUS", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.P).Settle().Keys(Key.F).Settle();
        Assert.Equal((1, 1), (screen.Stored.Checks.Passed, screen.Stored.Checks.Failed));
        Assert.Contains("1 passed, 1 FAILED", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Home, Key.R).Fill("0.4");
        Assert.Equal(0.4, Assert.IsType<MeterReading.Shown>(screen.Stored.Checks.Lines[0].Last!.What.Reading).Resistance.Ohms, 9);
        screen.Keys(Key.CursorDown, Key.R).Fill("ol");
        Assert.IsType<MeterReading.OverRange>(screen.Stored.Checks.Lines[1].Last!.What.Reading);
    }

    [Fact]
    public void The_record_is_written_to_a_new_file_only()
    {
        using TemporaryFolder folder = new();
        string path = Path.Combine(folder.Path, "record.json");
        using ScreenHarness screen = new(120, 40);
        screen.WithJob().Keys(Key.D5);
        Export(screen, path);
        screen.Until("The record is in");
        using JsonDocument written = JsonDocument.Parse(File.ReadAllText(path));
        Assert.Contains("Pump controller", written.RootElement.GetRawText(), StringComparison.Ordinal);
        Export(screen, path);
        screen.Until("! ");
        Assert.Contains("record.json", screen.Screen, StringComparison.Ordinal);
        Assert.NotNull(screen.State.Entry);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_record_to_hand_over_is_never_written_over_without_asking(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.Engines.RecordAnswers.Enqueue(new RecordAnswer.Exists(["/bench/record.html"]));
        screen.Engines.RecordAnswers.Enqueue(new RecordAnswer.Exists(["/bench/record.html"]));
        screen.Engines.RecordAnswers.Enqueue(new RecordAnswer.Written(["/bench/record.html", "/bench/record.md"]));
        screen.WithJob().Keys(Key.D5, Key.W).Until("Replace? There already: /bench/record.html").Keys(Key.N);
        Assert.Contains("Nothing was written", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.W).Until("Replace? There").Keys(Key.Y).Until("Written: /bench/record.html and record.md");
        screen.Keys(Key.W).Until("nothing was invented for this");
    }

    [Fact]
    public void The_record_is_the_one_that_the_report_command_writes()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Touch("1", 245, 8);
        string page = Path.Combine(bench.Folder.Path, "page.html");
        string text = Path.Combine(bench.Folder.Path, "text.md");
        bench.Must("report", "--html", page, "--markdown", text);
        using SqliteJobStore store = SqliteJobStore.Open(bench.Store);
        using ScreenHarness screen = new(120, 40, store, real: true);
        screen.Keys(Key.Enter).Until("Cautions").Keys(Key.Enter).Settle();
        int before = screen.Stored.LastNumber;
        bench.Must("report", "--html", page, "--markdown", text, "--force");
        screen.Keys(Key.D5, Key.W).Until("Written: ");
        Assert.Equal(before, screen.Stored.LastNumber);
        Assert.Equal(File.ReadAllText(page), File.ReadAllText(Assert.Single(Directory.GetFiles(screen.Folder.Path, "record-*.html"))));
        Assert.Equal(File.ReadAllText(text), File.ReadAllText(Assert.Single(Directory.GetFiles(screen.Folder.Path, "record-*.md"))));
    }

    private static void Export(ScreenHarness screen, string path)
    {
        screen.Keys(Key.X, Key.Home).Keys([.. Enumerable.Repeat(Key.Delete, 30)]);
        screen.Type(path).Keys(Key.Enter);
    }
}
