using Terminal.Gui.Input;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>Keys at random on a terminal whose size changes, from fixed seeds: nothing may end the program or be called its fault.</summary>
public sealed class RandomKeysTests
{
    private static readonly (int Width, int Height)[] _sizes = [(80, 24), (120, 40), (200, 60), (60, 16), (81, 25), (40, 10), (3, 2), (1, 1)];

    private static readonly Key[] _named =
    [
        Key.Enter, Key.Esc, Key.CursorUp, Key.CursorDown, Key.CursorLeft, Key.CursorRight, Key.PageUp, Key.PageDown, Key.Home, Key.End, Key.Tab,
        Key.Backspace, Key.Delete, Key.Space, Key.U.WithCtrl, Key.Q.WithCtrl, Key.D1.WithAlt, Key.D3.WithAlt, Key.D5.WithAlt,
    ];

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, false)]
    [InlineData(3, true)]
    [InlineData(4, true)]
    [InlineData(5, true)]
    [InlineData(6, true)]
    public void Keys_at_random_do_no_harm(int seed, bool withJob)
    {
        Random random = new(seed);
        using ScreenHarness screen = new();
        if (withJob)
        {
            screen.WithJob();
        }

        for (int i = 0; i < 400; i++)
        {
            screen.Keys(random.Next(3) == 0 ? _named[random.Next(_named.Length)] : new Key((char)random.Next('!', '~' + 1)));
            Assert.DoesNotContain("fault of the program", screen.State.Notice.Text, StringComparison.Ordinal);
            if (i % 20 == 0)
            {
                (int width, int height) = _sizes[random.Next(_sizes.Length)];
                screen.Resize(width, height);
            }

            if (i % 10 == 0)
            {
                screen.Wait(0.3);
            }
        }

        screen.Resize(80, 24).Settle();
        Assert.Contains("5 Record", screen.Screen, StringComparison.Ordinal);
    }
}
