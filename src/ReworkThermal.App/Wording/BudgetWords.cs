using System.Globalization;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Wording;

/// <summary>Sentences about heat budgets. Shares are shares of a limit; no word here may read like a chance of lifting.</summary>
internal static class BudgetWords
{
    internal const string Meaning = "A share says how much of a limit is used, at the most favourable and unfavourable end of every figure together. It is no chance of lifting: no such figure is published.";

    internal const string BarMeaning = "Bars: # central, ~ up to the unfavourable end, ! past the limit.";

    internal const string NoPads = "The job has no pads yet; enter its pins with 'job pins'.";

    internal const string GaugesHeading = "Gauges";

    internal const string NextHeading = "The next touch";

    internal const string PullHeading = "Pull check";

    internal const string RestsOn = "What the budget rests on";

    internal const string NoSettings = "Say how the next touch shall be made to see what it would cost, like --iron medium --iron-set 350 --seconds 4.";

    internal const string PadNeeded = "settings, --seconds, --board-temp and --now are for one pad: name it with --pad.";

    internal const string AtSettings = "settings";

    internal const string Costs = "costs";

    internal const string Leaves = "leaves";

    internal const string Flows = "flows through";

    internal const string NeverFlows = "not within this dwell";

    internal const string PadPeak = "pad peak";

    internal const string LongestSafe = "longest safe dwell";

    internal const string CoolFirst = "then let it cool";

    internal const string AtItsEnd = "when the tool comes off";

    internal const string Now = "now";

    internal const string Holds = "the pad holds";

    internal const string Intermetallic = "intermetallic (for information)";

    internal const string Incomplete = "incomplete";

    internal static readonly string[] JobColumns = ["pad", "name", ">used", ">range", "bar", "band", "governed by", ">touches", ">melts", "earlier heat"];

    internal static readonly string[] GaugeColumns = ["gauge", ">used", ">range", "bar", "band", "at worst", "support", "what it is"];

    internal static readonly string[] PullColumns = ["", ">force", ">margin", ">range", ""];

    internal static string JobTitle(JobId job, string label) => $"Heat budget of job {job}: {VisibleText.Of(label)}";

    internal static string PadTitle(PadId pad, string? name, JobId job) => $"Heat budget of pad {pad}{(name is null ? string.Empty : $" ({VisibleText.Of(name)})")}, job {job}";

    internal static string Headline(string band, string share, string low, string high, string reason) =>
        $"Band {band}: {share} of the budget is used ({low} to {high}). {reason}.";

    internal static string Prior(string text, bool assumed) => assumed ? $"{text}, assumed" : text;

    internal static string OfPad(PadId pad, string note) => $"Pad {pad}. {note}";

    internal static string NoSuchPad(PadId pad, IEnumerable<PadId> known) => $"there is no pad {pad} in this job; known: {string.Join(", ", known)}.";

    internal static string SettingsOfLastTouch(string tools) => $"The next touch is taken to be made like the last one: {tools}.";

    internal static string Missing(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} touches have no temperature and are NOT in this budget");

    internal static string DwellAt(string tools, string dwell) => $"{tools}, {dwell}";

    internal static string CostOf(string added, string low, string high) => $"{added} of the budget ({low} to {high})";

    internal static string LeavesAt(string band, string share, string worst) => $"band {band}, {share} used; at worst band {worst}";

    internal static string Within(string share) => $"so that less than {share} of the budget is used";

    internal static string SafeUpTo(string dwell, string within) => $"{dwell}, {within}";

    internal static string SafeBeyond(string asked, string within) => $"at least {asked}, {within}";

    internal static string SafeNone(string reason) => $"none: {reason}";

    internal static string Wait(string time, string target) => $"{time}, until the pad is below {target}: only then is its bond back";

    internal static string StillHot(string asked, string end, string target) => $"longer than {asked}: the pad is then still at {end}, and its bond is back below {target}";

    internal static string Cool(string target) => $"no wait needed: the pad stays below {target}";

    internal static string PullAt(string temperature) => $"pads and joints at {temperature}";

    internal static string Force(string central, string low, string high) => $"{central} N ({low} to {high} N) before it tears";

    internal static string PressedEdge(string force, string lifts, string margin, string outcome) =>
        $"A tip that presses the pad's edge with {force} N lifts the far edge with {lifts} N; the pad bears {margin} times that ({outcome}). Keep the tip on leg and solder, off the edge.";

    internal static string Verdict(PullVerdict verdict) => verdict switch
    {
        PullVerdict.DoNotPull no => Sentence.Of(no.Reason),
        PullVerdict.LiftWithoutForce lift => Sentence.Of(lift.Reason),
        PullVerdict.MayLift may => Sentence.Of(may.Reason),
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };
}
