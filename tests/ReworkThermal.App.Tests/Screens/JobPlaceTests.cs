using ReworkThermal.Core.Jobs;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>The job and its pins.</summary>
public sealed class JobPlaceTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_new_job_shows_the_cautions_once(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.Keys(Key.N).Fill("Pump controller").Until("Cautions");
        screen.Keys(Key.D2, Key.Esc, Key.N);
        Assert.Contains("Enter: I have read this", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Enter).Settle();
        Assert.True(screen.Stored.CautionsShown);
        screen.Keys(Key.J).Until("entries").Keys(Key.Enter).Until("base solder");
        Assert.DoesNotContain("I have read this", screen.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Bad_input_keeps_the_text_says_why_and_stays_out_of_the_store(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.WithJob();
        int before = screen.Stored.LastNumber;
        screen.Keys(Key.Home, Key.CursorDown, Key.Enter, Key.End).Type("zzz").Keys(Key.Enter);
        Assert.Contains("six-layerzzz", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("! 'six-layerzzz' is not known; there are: two-layer, six-layer", screen.Screen, StringComparison.Ordinal);
        Assert.Equal(before, screen.Stored.LastNumber);
        screen.Keys(Key.Backspace, Key.Backspace, Key.Backspace, Key.Enter);
        Assert.Null(screen.State.Entry);
        Assert.Equal(before, screen.Stored.LastNumber);
    }

    [Fact]
    public void Arrows_choose_from_the_profiles_in_a_field()
    {
        using ScreenHarness screen = new();
        screen.WithJob().Keys(Key.Home, Key.CursorDown, Key.CursorDown, Key.Enter, Key.CursorDown, Key.Enter).Settle();
        Assert.Equal("terminal", screen.Stored.Brief.Joint);
    }

    [Theory]
    [InlineData("1=VBUS", "'1' is there twice")]
    [InlineData("9=", "'9=' leads nowhere")]
    [InlineData("a'b", "a pad name is")]
    [InlineData(" ", "name 1 to 500 pins")]
    public void A_wrong_list_of_pins_is_refused_beside_the_field(string text, string complaint)
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob();
        int before = screen.Stored.LastNumber;
        screen.Keys(Key.A).Type(text).Keys(Key.Enter);
        Assert.Contains(complaint, screen.Screen, StringComparison.Ordinal);
        Assert.Equal(before, screen.Stored.LastNumber);
    }

    [Fact]
    public void Pins_are_looked_at_with_one_key_and_found_by_filter()
    {
        using ScreenHarness screen = new();
        screen.WithJob().Keys(Key.A).Fill("A4-A7=SENSE / B1=NC").Until("SENSE");
        Assert.Equal(["1", "2", "A4", "A5", "A6", "A7", "B1", "3"], screen.Stored.Pads.Keys.Select(p => p.Value));
        screen.Keys(Key.Tab, Key.S, Key.CursorDown, Key.L).Settle();
        Assert.Equal(PadState.Sound, screen.Stored.Pads[new PadId("1")].State);
        Assert.Equal(PadState.Loose, screen.Stored.Pads[new PadId("2")].AsArrived);
        Assert.Contains("LOOSE", screen.Screen, StringComparison.Ordinal);
        screen.Keys(new Key('/')).Type("loose").Keys(Key.Enter);
        Assert.Contains("Pins: 1 of 8 with 'loose'", screen.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("SENSE", screen.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Heat_before_arrival_gives_a_budget_as_bar_and_number()
    {
        using ScreenHarness screen = new(120, 40);
        screen.WithJob().Until("no prior");
        screen.Keys(Key.Tab, Key.H.WithShift).Settle().Until("10 % (5 to 50)");
        Assert.Contains("█░░░░░░░ 10 % (5 to 50)", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("heat budget 10 % (5 to 50)", screen.LastRow, StringComparison.Ordinal);
        Assert.All(screen.Stored.Pads.Values, p => Assert.Equal(PriorCondition.Sound, p.Prior));
    }

    [Fact]
    public void A_store_that_cannot_write_keeps_the_text_and_says_so()
    {
        using FailingStore store = new();
        using ScreenHarness screen = new(store: store);
        screen.WithJob();
        store.Fails = true;
        screen.Keys(Key.N).Type("important").Keys(Key.Enter).Until("the disk is full");
        Assert.Contains("important", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("NOT SAVED", screen.LastRow, StringComparison.Ordinal);
        store.Fails = false;
        screen.Keys(Key.Enter).Settle();
        Assert.Contains("all saved", screen.LastRow, StringComparison.Ordinal);
        Assert.Equal("important", screen.Stored.Notes.Single().What.Text);
    }
}
