using System.Text;

namespace ReworkThermal.App.Screens.Canvas;

/// <summary>One place of the screen.</summary>
/// <param name="Glyph">Character; the null character in the second half of a wide one.</param>
/// <param name="Ink">What it is part of.</param>
internal readonly record struct Cell(Rune Glyph, Ink Ink)
{
    /// <summary>Nothing.</summary>
    internal static readonly Cell Blank = new(new Rune(' '), Ink.Plain);
}
