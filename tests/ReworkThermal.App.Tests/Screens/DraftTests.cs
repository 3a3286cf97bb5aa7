using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;
using ReworkThermal.Data.Store;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>What is being typed when the program ends is offered at the next start.</summary>
public sealed class DraftTests
{
    [Fact]
    public void A_text_cut_short_is_offered_taken_up_in_its_field_and_gone_from_the_file()
    {
        using TemporaryFolder folder = new();
        DraftFile drafts = new(Path.Combine(folder.Path, "jobs.db"));
        using InMemoryJobStore store = new();
        using (ScreenHarness screen = new(120, 40, store, drafts: drafts))
        {
            screen.WithJob().Keys(Key.D1, Key.Tab, Key.N).Type("lifted at the corner");
            Assert.Null(screen.End());
        }

        Assert.Equal("lifted at the corner", Assert.Single(drafts.Read()).Text);
        using (ScreenHarness again = new(120, 40, store, drafts: drafts))
        {
            again.Until("Unfinished in 'Pump controller'").Keys(Key.D4);
            Assert.Contains("Unfinished", again.Screen, StringComparison.Ordinal);
            again.Keys(Key.Enter).Until(() => again.State.Entry is not null);
            Assert.Equal("lifted at the corner", again.State.Entry!.Text);
            Assert.Equal("Pump controller", again.State.Job!.Brief.Label);
            again.Keys(Key.Enter).Settle();
            Assert.Equal(("lifted at the corner", "1"), (again.Stored.Notes[0].What.Text, again.Stored.Notes[0].What.Pad?.Value));
            Assert.Null(again.End());
        }

        Assert.False(File.Exists(drafts.Path));
    }

    [Fact]
    public void A_draft_is_put_off_by_Escape_and_thrown_away_by_N()
    {
        using TemporaryFolder folder = new();
        DraftFile drafts = new(Path.Combine(folder.Path, "jobs.db"));
        Draft draft = new(null, string.Empty, "Job", "new-job", string.Empty, "name", "half a na");
        drafts.Keep([draft]);
        using (ScreenHarness screen = new(drafts: drafts))
        {
            screen.Until("half a na").Keys(Key.Esc).Until("offered again at the next start");
            Assert.Null(screen.End());
        }

        Assert.Equal([draft], drafts.Read());
        using ScreenHarness again = new(drafts: drafts);
        again.Until("half a na").Keys(Key.N).Until("Thrown away.");
        Assert.Null(again.End());
        Assert.Empty(drafts.Read());
    }

    [Fact]
    public void What_the_store_took_or_what_stood_there_before_is_no_draft()
    {
        using TemporaryFolder folder = new();
        DraftFile drafts = new(Path.Combine(folder.Path, "jobs.db"));
        using ScreenHarness screen = new(drafts: drafts);
        screen.WithJob().Keys(Key.D5, Key.N).Fill("kept").Keys(Key.D1, Key.Home, Key.Enter);
        Assert.Equal("Pump controller", screen.State.Entry?.Text);
        Assert.Null(screen.End());
        Assert.False(File.Exists(drafts.Path));
    }

    [Fact]
    public void A_draft_whose_field_is_gone_becomes_a_note_and_one_whose_job_is_gone_says_so()
    {
        using TemporaryFolder folder = new();
        DraftFile drafts = new(Path.Combine(folder.Path, "jobs.db"));
        using InMemoryJobStore store = new();
        string job;
        using (ScreenHarness screen = new(store: store))
        {
            job = screen.WithJob().State.Job!.Id.Value;
        }

        drafts.Keep([new Draft(job, "Pump controller", "Clock", "touch", "99", "seconds", "2.5"), new Draft("gone", "Old", "Job", "note", "", "note", "lost job")]);
        using ScreenHarness again = new(120, 40, store, drafts: drafts);
        again.Until("2.5").Keys(Key.Enter).Until(() => again.State.Entry is not null).Keys(Key.Enter).Settle();
        Assert.Equal("2.5", again.Stored.Notes[0].What.Text);
        again.Until("which is not in this store").Keys(Key.Enter);
        Assert.Contains("lost job", again.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_list_of_drafts_is_set_aside_and_said()
    {
        using TemporaryFolder folder = new();
        DraftFile drafts = new(Path.Combine(folder.Path, "jobs.db"));
        foreach (string broken in new[] { "", "{", "[{}]", "[{\"job\":null,\"text\":null}]", "7" })
        {
            File.WriteAllText(drafts.Path, broken);
            DataFileException said = Assert.Throws<DataFileException>(drafts.Read);
            Assert.Contains(drafts.Path + ".unreadable", said.Message, StringComparison.Ordinal);
            Assert.Equal(broken, File.ReadAllText(drafts.Path + ".unreadable"));
            Assert.Empty(drafts.Read());
        }
    }

    [Fact]
    public void A_text_that_cannot_be_kept_is_handed_back_to_be_said()
    {
        using TemporaryFolder folder = new();
        DraftFile drafts = new(Path.Combine(folder.Path, "jobs.db"));
        Directory.CreateDirectory(drafts.Path);
        using ScreenHarness screen = new(drafts: drafts);
        screen.Keys(Key.N).Type("half a na");
        Assert.Contains("half a na", screen.End(), StringComparison.Ordinal);
    }
}
