using System.Globalization;
using System.Text;

namespace ReworkThermal.Core.Jobs;

/// <summary>
/// Makes text that a person typed safe to print: control characters, terminal escapes and characters that turn the direction of
/// writing become visible codes. The stored text stays as it was.
/// </summary>
public static class VisibleText
{
    /// <summary>Replaces every character that a terminal may act on.</summary>
    /// <param name="text">Text from the store.</param>
    /// <returns>The same text with such characters as <c>&lt;U+001B&gt;</c>; line breaks and tabs are replaced too.</returns>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.EnumerateRunes().Any(Acts))
        {
            return text;
        }

        StringBuilder shown = new(text.Length + 16);
        foreach (Rune rune in text.EnumerateRunes())
        {
            _ = Acts(rune)
                ? shown.Append(CultureInfo.InvariantCulture, $"<U+{rune.Value:X4}>")
                : shown.Append(rune.ToString());
        }

        return shown.ToString();
    }

    private static bool Acts(Rune rune) => Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned;
}
