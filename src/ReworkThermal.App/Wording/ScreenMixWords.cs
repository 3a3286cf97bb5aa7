using System.Globalization;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the mix.</summary>
internal static class ScreenMixWords
{
    internal const string Title = "What is mixed";
    internal const string Keys = "left/right changes   PgUp/PgDn by 5   Enter types   K keep as note";
    internal const string ResultTitle = "The mix";
    internal const string CurveAcross = "°C";
    internal const string CurveUp = "liquid %";
    internal const string FlowMark = "flow 97 %";
    internal const string Flow = "flow";
    internal const string Liquidus = "liquidus";
    internal const string Solidus = "solidus";
    internal const string ScheilEnd = "Scheil end";
    internal const string NoScheil = "no certified value";
    internal const string Reckoning = "reckoning ...";
    internal const string Overtaken = "(reckoning)";
    internal const string NoAmount = "no solder volume: choose a through joint and a board";
    internal const string NoResidue = "needs the solder volume";
    internal const string NotedInRecord = "The mix is kept as a note in the record.";
    internal const string NotCertified = "the melting of this mix has no certified value";
    internal static string Field(MixField field) => field switch
    {
        MixField.Joint => "joint",
        MixField.Board => "board",
        MixField.BaseSolder => "base solder",
        MixField.Alloy => "dilution alloy",
        MixField.SharePercent => "share of mix, %",
        MixField.Removal => "taken out with",
        MixField.Passes => "passes",
        MixField.Refill => "refit with",
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static string Celsius(double value, double plusMinus) => string.Create(CultureInfo.InvariantCulture, $"{value,6:0.0} °C ±{plusMinus:0.#}");

    internal static string Amount(double jointMg, double addedMg) => string.Create(
        CultureInfo.InvariantCulture,
        $"{addedMg:0.0} mg into {jointMg:0.0} mg");

    internal static string Percent(double share) => share is > 0 and < 0.0005
        ? "<0.05 %"
        : string.Create(CultureInfo.InvariantCulture, $"{share * 100:0.##} %");

    internal static string Residue(double share) => $"last pass leaves {Percent(share)}";

    internal static string StillLiquid(double at100, double at140) => $"liquid 100 °C {Percent(at100)}, 140 °C {Percent(at140)}";

    internal static string Needed(int? passes, int most) => passes is int count
        ? string.Create(CultureInfo.InvariantCulture, $"clean after {count} pass{(count == 1 ? string.Empty : "es")} (under 0.1 %)")
        : string.Create(CultureInfo.InvariantCulture, $"not clean after {most} passes (over 0.1 %)");

    internal static string NoAnswer(string reason) => $"No answer: {reason}";

    internal static string AsNote(MixQuestion question, MixFigures figures) => string.Create(
        CultureInfo.InvariantCulture,
        $"Mix considered: {question.SharePercent:0.#} % {question.Alloy} in {question.BaseSolder}: flow {figures.FlowC:0.0}, liquidus {figures.LiquidusC:0.0}, solidus {figures.SolidusC:0.0} °C, ± {figures.UncertaintyK:0.#} K; {question.Passes} passes, refit {question.Refill}.");
}
