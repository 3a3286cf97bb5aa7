using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Sentences for what cannot be done, and what would be right.</summary>
internal static class Refusals
{
    internal const string BrokenOff = "broken off before there was an answer; nothing was stored.";

    internal const string NoSuchFile = "there is no such file";

    internal const string TraceHint = "set REWORK_THERMAL_TRACE=1 to see where, and please report it with the command and its files.";

    internal const string RatioOrTarget = "give either --ratio, like 0.3, or --target-flow, like 170.";

    internal const string WhyOrCompare = "give either --why, to explain one plan, or --compare, to set two side by side.";

    internal static string UnknownName(string option, string name, IEnumerable<string> known) =>
        $"{option} '{name}' is not known; choose from {string.Join(", ", known.Order(StringComparer.Ordinal))}.";

    internal const string GoldHalf = "--gold-area and --gold-thickness go together: the mass of gold is area by thickness by density.";

    internal static string NotThrough(string joint) => $"--joint '{joint}' is not a through-hole joint; its solder volume cannot be computed.";

    internal static string WhichBoard(string joint, IReadOnlyCollection<string> fitting) => fitting.Count == 0
        ? $"no board at hand fits the joint '{joint}'; name one with --board to see why."
        : $"name the board of '{joint}' with --board; it fits {string.Join(", ", fitting.Order(StringComparer.Ordinal))}.";

    internal static string DoesNotFit(string joint, string board, string why) => $"the joint '{joint}' does not fit the board '{board}': {why}.";

    internal static string InFile(string path, string reason) => $"{path}: {reason}";

    internal static string PlanNeedsThrough(string joint) => $"the joint '{joint}' is not a through-hole joint; plans are made for through-hole joints only.";

    internal static string HelpHint(string command) => $"try '{command} --help'.";

    internal static string LeftOut(string problem) => $"left out: {problem}";

    internal static string MoreProblems(int all, int shown) => string.Create(CultureInfo.InvariantCulture, $"{all} complaints in all; the first {shown} are shown.");

    internal static string OutputLost(string why, string? kept) => $"standard output cannot be written: {why}. {kept ?? "No entry was recorded."}";

    internal static string ProgramFault(string message) => $"a fault of the program itself, not of your input: {message}";

    internal static string BothOrNone(params string[] options) => $"{string.Join(" and ", options)} belong together; give all of them or none.";

    internal static string OnlyWith(string option, string other) => $"{option} says how {other} is used; give {other} too.";

    internal static string NoPath(string option, string kind) => $"{option} names no {kind}; got ''.";

    internal static string UnknownPicture(string path) => $"--plot '{path}': a picture's name ends in .svg or .png.";

    internal static string NotANumber(string option, string text) =>
        $"{option} needs a number with a decimal point, like 0.3; got '{text}'.";

    internal static string NotAWholeNumber(string option, string text, int least, int most) => string.Create(
        CultureInfo.InvariantCulture,
        $"{option} needs a whole number from {least} to {most}; got '{text}'.");

    internal static string OutOfLimits(string option, double value, double least, double most, string unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"{option} must lie between {least:0.###} and {most:0.###}{(unit.Length > 0 ? " " + unit : string.Empty)}; got {value:0.######}.");

    internal static string TooFewSamples(int least) => string.Create(
        CultureInfo.InvariantCulture,
        $"--samples must be 0, or {least} or more: fewer benches give no spread");

    internal static string NoSuchPlan(int number, int count) => string.Create(
        CultureInfo.InvariantCulture,
        $"there is no plan {number}: the answer has plans 1 to {count}.");
}
