using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Words of a plan.</summary>
internal static class PlanWords
{
    internal const string NoPlan = "No plan holds every limit. What was tried, and what stopped it, stands below.";

    internal const string RuledOutHeading = "Ruled out";

    internal const string BudgetHeading = "What the heat budget rests on";

    internal const string Add = "add";

    internal const string Nothing = "nothing";

    internal const string MixFlow = "mix flows at";

    internal const string Iron = "iron";

    internal const string Preheat = "preheat board to";

    internal const string Air = "hot air";

    internal const string NotUsed = "not used";

    internal const string Dwell = "dwell";

    internal const string TimeToFlow = "time to flow";

    internal const string Passes = "passes";

    internal const string BudgetShare = "heat budget used";

    internal const string BindingLimit = "held back by";

    internal static string Found(int count) => string.Create(
        CultureInfo.InvariantCulture,
        $"{count} plan{(count == 1 ? string.Empty : "s")} that hold{(count == 1 ? "s" : string.Empty)} every limit, best first.");

    internal static string PlanHeading(int number, string kind) => string.Create(CultureInfo.InvariantCulture, $"Plan {number}: {kind}");

    internal static string Amount(string mass, string alloy) => $"{mass} of {alloy}";

    internal static string AirSetting(string temperature, string litres) => $"{temperature} at {litres} L/min";

    internal static string DwellAndStop(string dwell, string stop) => $"{dwell}; stop at {stop} at the latest, flowed or not";

    internal static string Sampled(string middle, string early, string late) => $"{middle}; one run in ten under {early}, nine in ten under {late}";

    internal static string CentralOnly(string time) => $"{time} with central values; the spread was not sampled";

    internal static string Range(string central, string low, string high) => $"{central} ({low} to {high})";
}
