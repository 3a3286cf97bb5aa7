using System.Globalization;
using UnitsNet;

namespace ReworkThermal.App.Rendering;

/// <summary>Quantities as text for a reader: invariant, with the unit, and with no more digits than they deserve.</summary>
internal static class Numerals
{
    private const int MostPercentDigits = 5;

    internal static string Celsius(Temperature temperature, int digits = 1) => Fixed(temperature.DegreesCelsius, digits) + " °C";

    internal static string Kelvin(double kelvin, int digits = 1) => Fixed(kelvin, digits) + " K";

    internal static string Seconds(Duration duration) => Fixed(duration.Seconds, 1) + " s";

    internal static string LitresPerMinute(VolumeFlow flow) => Fixed(flow.LitersPerMinute, 0) + " L/min";

    internal static string Milligrams(Mass mass) => Fixed(mass.Milligrams, mass.Milligrams < 10 ? 1 : 0) + " mg";

    internal static string Millimetres(Length length) => Fixed(length.Millimeters, length.Millimeters < 10 ? 1 : 0) + " mm";

    /// <summary>A share in percent; a small one keeps two significant digits, so that it is not rounded away to nothing.</summary>
    internal static string Percent(double share)
    {
        double percent = share * 100;
        double size = Math.Abs(percent);
        int digits = size >= 10 ? 0 : size is >= 0.1 or 0 ? 1 : 1 - (int)Math.Floor(Math.Log10(size));
        return digits > MostPercentDigits ? "under 0.0001 %" : Fixed(percent, digits) + " %";
    }

    internal static string Fixed(double value, int digits)
    {
        string text = value.ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.AsSpan().TrimStart('-').TrimStart("0.").IsEmpty ? text.TrimStart('-') : text;
    }
}
