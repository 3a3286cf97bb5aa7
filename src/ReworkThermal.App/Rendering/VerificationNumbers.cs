using System.Globalization;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Verification;

namespace ReworkThermal.App.Rendering;

/// <summary>Figures of a verification as text: as many digits as the deviation deserves.</summary>
internal static class VerificationNumbers
{
    private const int Significant = 5;

    internal static string Published(ComparedValue figure) => WithUnit(figure.Published.Value, figure.Published.Unit);

    internal static string Computed(ComparedValue figure) =>
        figure.Computed is { } computed ? WithUnit(computed, figure.Published.Unit) : VerificationWords.NotComputed;

    /// <summary>Two digits and a sign.</summary>
    internal static string Deviation(ComparedValue figure) =>
        figure.Deviation is { } deviation ? (deviation > 0 ? "+" : string.Empty) + Rounded(deviation, 2) : VerificationWords.NotComputed;

    private static string WithUnit(double value, string unit) => unit.Length > 0 ? $"{Rounded(value, Significant)} {unit}" : Rounded(value, Significant);

    private static string Rounded(double value, int digits)
    {
        if (value == 0)
        {
            return "0";
        }

        int places = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return places is < 0 or > 7
            ? value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : Math.Round(value, places).ToString(CultureInfo.InvariantCulture);
    }
}
