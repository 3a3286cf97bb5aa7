using System.Globalization;
using System.Text;

namespace ReworkThermal.App.Screens.Canvas;

/// <summary>How many places of the screen a character takes (the wide and full-width ranges of Unicode's East Asian Width table, in short form).</summary>
internal static class CellWidth
{
    private static readonly (int First, int Last)[] _wide =
    [
        (0x1100, 0x115F), (0x2E80, 0x303E), (0x3041, 0x33FF), (0x3400, 0x4DBF), (0x4E00, 0x9FFF), (0xA000, 0xA4CF), (0xAC00, 0xD7A3),
        (0xF900, 0xFAFF), (0xFE30, 0xFE4F), (0xFF00, 0xFF60), (0xFFE0, 0xFFE6), (0x1F300, 0x1F64F), (0x1F900, 0x1F9FF), (0x20000, 0x3FFFD),
    ];

    /// <summary>Width of a character [places]: 0, 1 or 2.</summary>
    internal static int Of(Rune rune)
    {
        if (rune.Value < 0x300)
        {
            return 1;
        }

        return Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format
            ? 0
            : Array.Exists(_wide, range => rune.Value >= range.First && rune.Value <= range.Last) ? 2 : 1;
    }

    /// <summary>Width of a text [places].</summary>
    internal static int Of(string text) => text.EnumerateRunes().Sum(Of);
}
