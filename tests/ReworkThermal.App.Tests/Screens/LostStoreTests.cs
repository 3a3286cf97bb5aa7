using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>A store whose file goes away while the screens are open.</summary>
public sealed class LostStoreTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string StorePath => Path.Combine(_folder.Path, "jobs.db");

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_was_typed_stays_and_goes_to_another_file(bool replaced)
    {
        // Windows does not let an open store be taken away.
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using ScreenHarness screen = new(100, 30, SqliteJobStore.Open(StorePath));
        screen.WithJob();
        JobId job = screen.State.Job!.Id;
        Take(replaced);
        screen.Keys(Key.N).Type("important").Keys(Key.Enter).Until("NOT SAVED");
        Assert.Contains("important", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("Ctrl+W", screen.LastRow, StringComparison.Ordinal);

        string rescue = Path.Combine(_folder.Path, "rescue.db");
        screen.Keys(Key.W.WithCtrl).Until("write all jobs to a new file");
        screen.Keys(Key.Esc).Until("important");
        screen.Keys(Key.W.WithCtrl).Type(rescue).Keys(Key.Enter).Until("All jobs are in");
        Assert.Contains("important", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Enter).Settle().Until("Kept.");
        Assert.Contains("all saved", screen.LastRow, StringComparison.Ordinal);
        using SqliteJobStore after = SqliteJobStore.Open(rescue);
        JobState kept = JobState.Replay(job, after.Read(job));
        Assert.Equal("important", kept.Notes.Single().What.Text);
        Assert.NotEmpty(kept.Pads);
    }

    [Fact]
    public void A_store_that_goes_away_is_told_without_a_key_and_leaving_does_not_say_that_all_is_saved()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using ScreenHarness screen = new(100, 30, SqliteJobStore.Open(StorePath));
        screen.WithJob();
        Assert.Contains("all saved", screen.LastRow, StringComparison.Ordinal);
        Take(replaced: false);
        screen.Until("NOT SAVED").Keys(Key.Q).Until("Leave the program?");
        Assert.DoesNotContain("Everything is saved", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.N);
        screen.Keys(Key.W.WithCtrl).Type(StorePath).Keys(Key.Enter).Until("All jobs are in");
        screen.Keys(Key.N).Type("again").Keys(Key.Enter).Settle().Until("Kept.");
        using SqliteJobStore after = SqliteJobStore.Open(StorePath);
        _ = Assert.Single(after.List());
    }

    private void Take(bool replaced)
    {
        if (replaced)
        {
            string other = Path.Combine(_folder.Path, "other.db");
            SqliteJobStore.Open(other).Dispose();
            File.Move(other, StorePath, overwrite: true);
        }
        else
        {
            File.Delete(StorePath);
        }
    }
}
