using System.Globalization;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Reads numbers that were typed: a decimal point, finite, within limits, or a complaint.</summary>
internal static class Typed
{
    /// <summary>Reads a number.</summary>
    /// <returns>Null when it can be used, else what is wrong and what would be right.</returns>
    internal static string? Number(string text, double least, double most, string unit, out double value) =>
        !double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value)
        || !double.IsFinite(value)
            ? ScreenWords.NotANumber(text, least, most, unit)
            : value < least || value > most ? ScreenWords.OutOfLimits(text, least, most, unit) : null;

    /// <summary>A number as it would be typed.</summary>
    internal static string Text(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
