using ReworkThermal.App.Screens.Canvas;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ReworkThermal.App.Screens.Running;

/// <summary>
/// Turns inks into what the terminal shows. The background is always the terminal's own, and only the sixteen common colours are
/// used, so that the user's own settings of them hold.
/// </summary>
internal sealed class Palette
{
    private readonly Attribute[] _attributes;

    internal Palette(PaletteKind kind) => _attributes = [.. Enum.GetValues<Ink>().Select(ink => Of(kind, ink))];

    internal Attribute this[Ink ink] => _attributes[(int)ink];

    /// <summary>Which colours suit, by what the user asked for and the environment says.</summary>
    /// <param name="options">What the user asked for.</param>
    /// <param name="environment">Value of an environment variable; null when it is not set.</param>
    internal static PaletteKind Choose(ScreenOptions options, Func<string, string?> environment) =>
        options.Plain || !string.IsNullOrEmpty(environment("NO_COLOR")) ? PaletteKind.Colourless
        : options.Light || IsLight(environment("COLORFGBG")) ? PaletteKind.Light
        : PaletteKind.Dark;

    // Some terminals say 'foreground;background' by colour number; 7 and 15 are the two whites.
    private static bool IsLight(string? colours) => colours?.Split(';')[^1] is "7" or "15";

    private static Attribute Of(PaletteKind kind, Ink ink)
    {
        TextStyle style = ink switch
        {
            Ink.Strong or Ink.Heading or Ink.Care or Ink.Alarm => TextStyle.Bold,
            Ink.Chosen => TextStyle.Reverse,
            Ink.LoudAlarm => TextStyle.Reverse | TextStyle.Bold,
            Ink.Entry => TextStyle.Underline,
            _ => TextStyle.None,
        };
        return new Attribute(kind == PaletteKind.Colourless ? Color.None : Foreground(kind == PaletteKind.Dark, ink), Color.None, style);
    }

    private static Color Foreground(bool dark, Ink ink) => ink switch
    {
        Ink.Quiet => new Color(dark ? ColorName16.Gray : ColorName16.DarkGray),
        Ink.Heading => new Color(dark ? ColorName16.BrightCyan : ColorName16.Blue),
        Ink.Good => new Color(dark ? ColorName16.BrightGreen : ColorName16.Green),
        Ink.Care => new Color(dark ? ColorName16.BrightYellow : ColorName16.Magenta),
        Ink.Alarm or Ink.LoudAlarm => new Color(dark ? ColorName16.BrightRed : ColorName16.Red),
        Ink.Trace => new Color(dark ? ColorName16.BrightCyan : ColorName16.Blue),
        _ => Color.None,
    };
}
