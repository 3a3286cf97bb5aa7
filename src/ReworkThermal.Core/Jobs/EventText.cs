using System.Globalization;

namespace ReworkThermal.Core.Jobs;

/// <summary>Rules for text that a person typed. Everything is kept as typed; only what no file could carry is refused.</summary>
internal static class EventText
{
    /// <summary>Longest text of one field [UTF-16 units].</summary>
    internal const int Longest = 20_000;

    internal static string? Required(string what, string? text, int longest = Longest) =>
        string.IsNullOrWhiteSpace(text) ? $"{what} must not be empty" : Optional(what, text, longest);

    internal static string? Optional(string what, string? text, int longest = Longest)
    {
        if (text is null)
        {
            return null;
        }

        if (text.Length > longest)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{what} must have at most {longest} characters; got {text.Length}");
        }

        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                return $"{what} holds half a character (a lone surrogate) and is no valid text";
            }
        }

        return null;
    }
}
