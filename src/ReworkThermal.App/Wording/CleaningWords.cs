using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the cleaning report.</summary>
internal static class CleaningWords
{
    internal const string Clean = "clean";

    internal const string NotClean = "NOT clean";

    internal static readonly string[] Columns =
        [">passes", ">residue", ">solidus °C", ">Scheil end", ">liquid at 100", ">at 140", "verdict", "refitted joint"];

    internal static string Title(string joint, string alloy, string refill) => $"Cleaning {joint} after {alloy}, refit with {refill}";

    internal static string Uncertainty(string range) =>
        $"Temperatures in °C, ± {range}. Clean means that under 0.1 % of the mass is still liquid at 140 °C on real cooling (judgement).";

    internal static string Verdict(int asked, bool isClean, int? enough, int? best, int? worst, int most) => string.Create(
        CultureInfo.InvariantCulture,
        $"{asked} {(asked == 1 ? "pass leaves" : "passes leave")} the refitted joint {(isClean ? "clean" : "with too much low-melting residue")}; enough: {Count(enough, most)} ({Count(best, most)} when every pass goes well, {Count(worst, most)} when every pass goes badly).");

    private static string Count(int? passes, int most) => passes?.ToString(CultureInfo.InvariantCulture) ?? string.Create(CultureInfo.InvariantCulture, $"more than {most}");
}
