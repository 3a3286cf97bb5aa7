using System.Globalization;

namespace ReworkThermal.Data.Toml;

/// <summary>One kind of quantity and the units it may be written in; see <see cref="UnitTable"/>.</summary>
internal abstract class Quantity
{
    /// <summary>Words for error messages, for example "a length".</summary>
    internal abstract string Words { get; }

    /// <summary>Allowed unit texts, comma separated, for error messages.</summary>
    internal abstract string UnitWords { get; }

    /// <summary>Splits "1.6 mm" into number and unit text.</summary>
    protected static bool TrySplit(string text, out double number, out string unit)
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
