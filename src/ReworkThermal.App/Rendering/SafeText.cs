using System.Globalization;
using System.Text;

namespace ReworkThermal.App.Rendering;

/// <summary>
/// Makes text from files and command lines harmless to a terminal: control characters and characters that turn the writing
/// direction would let a data file move the cursor, change colours or disguise what is printed.
/// </summary>
internal static class SafeText
{
    /// <summary>Text for one line: every control character becomes U+FFFD.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>Text without control characters.</returns>
    internal static string OneLine(string text) => Replace(text, keepLines: false);

    /// <summary>Like <see cref="OneLine"/>, but line ends stay.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>Text whose only control characters are line feeds.</returns>
    internal static string KeepingLines(string text) => Replace(text.ReplaceLineEndings("\n"), keepLines: true);

    private static string Replace(string text, bool keepLines)
    {
        bool Harmful(char c) => !(keepLines && c == '\n') && IsHarmful(c);
        if (!text.Any(Harmful))
        {
            return text;
        }

        StringBuilder safe = new(text.Length);
        foreach (char c in text)
        {
            safe.Append(Harmful(c) ? '\uFFFD' : c);
        }

        return safe.ToString();
    }

    private static bool IsHarmful(char c) => char.IsControl(c)
        || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
