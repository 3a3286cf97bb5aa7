using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.Drawing;
using ReworkThermal.App.Screens.State;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Drawing without a terminal.</summary>
public sealed class PictureTests
{
    [Fact]
    public void Every_size_can_be_drawn_in_every_place()
    {
        foreach (Place place in Enum.GetValues<Place>())
        {
            for (int width = 1; width <= 200; width += 13)
            {
                for (int height = 1; height <= 60; height += 7)
                {
                    Picture picture = BenchDrawing.Draw(new BenchState { Place = place }, width, height, plain: false);
                    Assert.Equal((width, height), (picture.Width, picture.Height));
                }
            }
        }
    }

    [Fact]
    public void Text_from_outside_cannot_control_the_terminal_and_wide_characters_keep_their_columns()
    {
        Sheet sheet = new(10, 2, plain: false);
        int after = sheet.Put(sheet.All, 0, 0, "a\u001b[2J漢b");
        string text = sheet.Finish().ToString();
        Assert.DoesNotContain('\u001b', text);
        Assert.Equal("a\uFFFD[2J漢b", text.Split('\n')[0]);
        Assert.Equal(8, after);
    }

    [Fact]
    public void A_wide_character_is_not_cut_in_half_at_the_edge()
    {
        Sheet sheet = new(4, 1, plain: false);
        Assert.Equal(3, sheet.Put(sheet.All, 0, 0, "abc漢"));
    }

    [Theory]
    [InlineData("short", "short")]
    [InlineData("a label that is longer", "a label...")]
    [InlineData("漢字漢字漢字漢字", "漢字漢字...")]
    public void A_text_that_does_not_fit_ends_in_dots_within_its_room(string text, string cut)
    {
        Assert.Equal(cut, Sheet.Cut(text, 11));
        Assert.True(CellWidth.Of(cut) <= 11);
    }

    [Fact]
    public void Only_what_differs_is_found()
    {
        Sheet one = new(10, 2, plain: false);
        Sheet other = new(10, 2, plain: false);
        one.Put(one.All, 0, 0, "touch 1.2 s");
        other.Put(other.All, 0, 0, "touch 1.3 s");
        Assert.Equal((8, 8), other.Finish().Difference(one.Finish(), 0));
        Assert.Null(other.Finish().Difference(one.Finish(), 1));
    }

    [Theory]
    [InlineData(0, "....")]
    [InlineData(0.5, "##..")]
    [InlineData(1, "####")]
    [InlineData(1.7, "###>")]
    [InlineData(-1, "....")]
    public void A_share_beyond_the_whole_ends_in_a_mark(double share, string bar) => Assert.Equal(bar, ShareBar.Of(share, 4, plain: true));

    [Fact]
    public void A_plot_puts_points_where_its_figures_say()
    {
        Sheet sheet = new(45, 13, plain: true);
        new CharacterPlot(sheet, sheet.All, (0, 10), (0, 100)).Axes("s", "C").Line([(0, 0), (10, 100)], '*', Ink.Trace).Finish();
        string[] rows = sheet.Finish().ToString().Split('\n');
        Assert.StartsWith("  50|", rows[5], StringComparison.Ordinal);
        Assert.Equal(5 + 19.5, rows[5].IndexOf('*', StringComparison.Ordinal) + ((rows[5].LastIndexOf('*') - rows[5].IndexOf('*', StringComparison.Ordinal)) / 2.0), 1.0);
    }
}
