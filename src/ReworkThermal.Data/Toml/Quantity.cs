using System.Globalization;

namespace ReworkThermal.Data.Toml;

/// <summary>One kind of quantity and the units it may be written in; see <see cref="UnitTable"/>.</summary>
/// <typeparam name="TQuantity">UnitsNet quantity.</typeparam>
/// <typeparam name="TUnit">Its unit enumeration.</typeparam>
/// <param name="words">Words for error messages, for example "a length".</param>
/// <param name="from">Builds the quantity from a number and a unit.</param>
/// <param name="units">Unit texts allowed in files.</param>
internal sealed class Quantity<TQuantity, TUnit>(string words, Func<double, TUnit, TQuantity> from, Dictionary<string, TUnit> units)
    where TQuantity : struct
    where TUnit : struct, Enum
{
    /// <summary>Largest number before a unit; some quantities count in decimal numbers, which end near 1e28.</summary>
    private const double Largest = 1e20;

    /// <summary>Words for error messages, for example "a length".</summary>
    internal string Words => words;

    /// <summary>Allowed unit texts, comma separated, for error messages.</summary>
    internal string UnitWords => string.Join(", ", units.Keys);

    /// <summary>Reads text such as "1.6 mm".</summary>
    /// <param name="text">Number, space, unit.</param>
    /// <param name="quantity">The quantity.</param>
    /// <returns>Whether the text is a number of a size that can mean something, with an allowed unit.</returns>
    internal bool TryParse(string text, out TQuantity quantity)
    {
        if (TrySplit(text, out double number, out string unit) && Math.Abs(number) <= Largest && units.TryGetValue(unit, out TUnit known))
        {
            quantity = from(number, known);
            return true;
        }

        quantity = default;
        return false;
    }

    private static bool TrySplit(string text, out double number, out string unit)
    {
        string trimmed = text.Trim();
        int end = 0;
        while (end < trimmed.Length && (char.IsAsciiDigit(trimmed[end]) || "+-.eE".Contains(trimmed[end], StringComparison.Ordinal)))
        {
            end++;
        }

        unit = trimmed[end..].Trim();
        return double.TryParse(trimmed.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
    }
}
