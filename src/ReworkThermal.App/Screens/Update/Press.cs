using System.Text;

namespace ReworkThermal.App.Screens.Update;

/// <summary>A key.</summary>
/// <param name="Kind">Which kind.</param>
/// <param name="Character">The character of a character or digit key; else the null character.</param>
internal readonly record struct Press(PressKind Kind, Rune Character = default)
{
    /// <summary>The character as a lower-case letter, or the null character.</summary>
    internal char Letter => Kind == PressKind.Character && Character.IsAscii ? char.ToLowerInvariant((char)Character.Value) : '\0';

    /// <summary>Whether this is the key that starts and stops a touch.</summary>
    internal bool IsStroke => Kind == PressKind.Enter || (Kind == PressKind.Character && Character.Value == ' ');

    internal static Press Of(char character) => new(PressKind.Character, new Rune(character));
}
