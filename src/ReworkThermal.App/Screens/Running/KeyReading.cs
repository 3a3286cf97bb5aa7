using System.Text;
using ReworkThermal.App.Screens.Update;
using Terminal.Gui.Input;

namespace ReworkThermal.App.Screens.Running;

/// <summary>Turns the toolkit's keys into the screens' own.</summary>
internal static class KeyReading
{
    /// <summary>Reads a key.</summary>
    /// <returns>Null when the screens have no use for it.</returns>
    internal static Press? Of(Key key)
    {
        if (key == Key.Q.WithCtrl)
        {
            return new Press(PressKind.Leave);
        }

        if (key == Key.U.WithCtrl)
        {
            return new Press(PressKind.Empty);
        }

        if (key == Key.W.WithCtrl)
        {
            return new Press(PressKind.Elsewhere);
        }

        if (key.IsAlt && key.NoAlt.AsRune is { Value: >= '1' and <= '5' } digit)
        {
            return new Press(PressKind.PlaceDigit, digit);
        }

        if (key.IsCtrl || key.IsAlt)
        {
            return null;
        }

        PressKind? kind = Named(key);
        Rune rune = key.AsRune;
        return kind is { } named ? new Press(named)
            : rune.Value >= ' ' && rune.Value != 0x7F ? new Press(PressKind.Character, rune)
            : null;
    }

    private static PressKind? Named(Key key)
    {
        (Key Key, PressKind Kind)[] named =
        [
            (Key.Enter, PressKind.Enter), (Key.Esc, PressKind.Escape), (Key.CursorUp, PressKind.Up), (Key.CursorDown, PressKind.Down),
            (Key.CursorLeft, PressKind.Left), (Key.CursorRight, PressKind.Right), (Key.PageUp, PressKind.PageUp),
            (Key.PageDown, PressKind.PageDown), (Key.Home, PressKind.Home), (Key.End, PressKind.End), (Key.Tab, PressKind.Tab),
            (Key.Backspace, PressKind.Backspace), (Key.Delete, PressKind.Delete),
        ];
        foreach ((Key known, PressKind kind) in named)
        {
            if (key == known)
            {
                return kind;
            }
        }

        return null;
    }
}
