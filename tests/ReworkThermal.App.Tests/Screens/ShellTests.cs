using ReworkThermal.App.Screens.Running;
using ReworkThermal.App.Wording;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Places, status line, help, leaving, sizes, looks.</summary>
public sealed class ShellTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(200, 60)]
    public void Digits_lead_to_the_five_places(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.WithJob();
        foreach ((Key key, string place, string content) in new[]
        {
            (Key.D2, "[2 Mix]", "dilution alloy"),
            (Key.D3, "[3 Plan]", "irons at hand"),
            (Key.D4, "[4 Clock]", "READY"),
            (Key.D5, "[5 Record]", "job opened: Pump controller"),
            (Key.D1, "[1 Job]", "base solder"),
        })
        {
            screen.Keys(key);
            Assert.Contains(place, screen.Screen, StringComparison.Ordinal);
            Assert.Contains(content, screen.Screen, StringComparison.Ordinal);
            Assert.Contains("all saved", screen.LastRow, StringComparison.Ordinal);
            Assert.Contains("Pump controller", screen.LastRow, StringComparison.Ordinal);
            Assert.Contains("pad 1", screen.LastRow, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Help_and_cautions_are_one_key_away_everywhere(int width, int height)
    {
        using ScreenHarness screen = new(width, height);
        screen.WithJob();
        foreach (Key place in new[] { Key.D1, Key.D2, Key.D3, Key.D4, Key.D5 })
        {
            screen.Keys(place, new Key('?'));
            Assert.Contains("Keys and words", screen.Screen, StringComparison.Ordinal);
            Assert.Contains("Esc never leaves", screen.Screen, StringComparison.Ordinal);
            screen.Keys(Key.Esc, new Key('!'));
            Assert.Contains("Never pull while any joint", screen.Screen, StringComparison.Ordinal);
            screen.Keys(Key.Esc);
            Assert.DoesNotContain("Never pull while any joint", screen.Screen, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Escape_never_leaves_and_leaving_asks()
    {
        using ScreenHarness screen = new();
        screen.WithJob().Keys(Key.Esc, Key.Esc, Key.Esc, Key.Q);
        Assert.Contains("Leave the program?", screen.Screen, StringComparison.Ordinal);
        screen.Keys(Key.Esc);
        Assert.False(screen.Left);
        screen.Keys(Key.Q.WithCtrl, Key.Y);
        Assert.True(screen.Left);
    }

    [Fact]
    public void Keys_that_come_before_the_jobs_are_read_are_kept()
    {
        using ScreenHarness place = new(early: Key.D5);
        Assert.Contains("[5 Record]", place.Screen, StringComparison.Ordinal);

        using ScreenHarness screen = new(early: [Key.N, Key.P, Key.U, Key.M]);
        screen.Fill("p").Until("Cautions");
        Assert.Equal("pump", screen.Stored.Brief.Label);
    }

    [Fact]
    public void Resizing_loses_nothing()
    {
        using ScreenHarness screen = new();
        screen.WithJob().Keys(Key.D5);
        screen.Resize(40, 10);
        Assert.Contains("too small", screen.Screen, StringComparison.Ordinal);
        screen.Resize(200, 60);
        Assert.Contains("[5 Record]", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("pins added: 1=VBUS 2=GND", screen.Screen, StringComparison.Ordinal);
        screen.Resize(80, 24).Keys(Key.D1);
        Assert.Contains("VBUS", screen.Screen, StringComparison.Ordinal);
        Assert.Contains("all saved", screen.LastRow, StringComparison.Ordinal);
    }

    [Fact]
    public void Plain_mode_draws_with_ASCII_and_without_colour()
    {
        using ScreenHarness screen = new(options: new ScreenOptions(Plain: true, Light: false, Store: null));
        screen.WithJob();
        foreach (Key place in new[] { Key.D1, Key.D2, Key.D3, Key.D4, Key.D5 })
        {
            screen.Keys(place);
            Assert.DoesNotContain(screen.Screen, c => c > '\u007F' && c is not ('°' or '±'));
            Assert.All(screen.Attributes, a => Assert.Equal((Color.None, Color.None), (a.Foreground, a.Background)));
        }
    }

    [Theory]
    [InlineData(false, false, null, null, PaletteKind.Dark)]
    [InlineData(false, false, "1", null, PaletteKind.Colourless)]
    [InlineData(false, true, null, null, PaletteKind.Light)]
    [InlineData(false, false, null, "0;15", PaletteKind.Light)]
    [InlineData(false, false, null, "15;0", PaletteKind.Dark)]
    [InlineData(true, true, null, null, PaletteKind.Colourless)]
    internal void Colours_follow_the_options_and_the_environment(bool plain, bool light, string? noColour, string? terminal, PaletteKind expected) =>
        Assert.Equal(expected, Palette.Choose(new ScreenOptions(plain, light, null), name => name == "NO_COLOR" ? noColour : name == "COLORFGBG" ? terminal : null));

    [Fact]
    public void Without_a_terminal_the_screens_say_so()
    {
        BenchResult result = Bench.Run("--plain");
        Assert.Equal(2, result.Code);
        Assert.Contains(ScreenWords.NeedsTerminal, result.Error, StringComparison.Ordinal);
    }
}
