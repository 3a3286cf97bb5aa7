namespace ReworkThermal.App.Wording;

/// <summary>Words of cleaning passes and the refit.</summary>
internal static class CleaningWords
{
    internal const string RatioAssumption = "The first pass adds as much alloy as there is solder in the joint (half of the mix); --ratio sets another share.";

    internal static readonly string[] Columns = [">passes", "final joint", ">solidus °C", ">Scheil end °C", ">liquid at 100 °C", ">liquid at 140 °C", "clean"];

    internal static string Title(string joint) => $"Passes and refit of {joint}";

    internal static string RemovalAssumption(string name) => $"Solder is taken out with {name}; --removal names another way.";

    internal static string FlushAssumption(string flush) =>
        $"The second and later passes fill the joint up with {flush} before it is drawn out; all solder is taken to be molten and mixed at every pass.";

    internal static string Plan(string before, string solder, string added, string alloy, string refill) =>
        $"In the joint: {before} of {solder}. The first pass adds {added} of {alloy}; the refit is {refill}.";

    internal static string Removed(string name, string central, string low, string high) =>
        $"Each pass takes out {central} with {name} ({low} to {high} is usual; judgement).";

    internal static string Verdict(int passes, bool clean, string share) => clean
        ? $"After {passes} passes the joint is clean: {share} of it is still liquid at 140 °C on real cooling, within 0.1 %."
        : $"After {passes} passes the joint is not clean: {share} of it is still liquid at 140 °C on real cooling; at most 0.1 % should be.";

    internal static string Enough(int? enough, int? best, int? worst, int most) =>
        $"Enough: {Count(enough, most)} passes; {Count(best, most)} at best, {Count(worst, most)} if every pass leaves the most it usually does.";

    private static string Count(int? passes, int most) => passes is { } count
        ? count.ToString(System.Globalization.CultureInfo.InvariantCulture)
        : $"more than {most.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
}
