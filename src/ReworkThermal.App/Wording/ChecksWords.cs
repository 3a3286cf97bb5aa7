using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.App.Wording;

/// <summary>Sentences about electrical checks.</summary>
internal static class ChecksWords
{
    internal const string NoChecks = "there is nothing to check yet; enter the pins first with 'job pins'.";

    internal const string AllProbed = "every check has been probed; name one with --number to probe it again.";

    internal const string ReadingNeeded = "say what the meter showed with --ohms, or --over-range.";

    internal const string OneReading = "the meter shows one thing: give --ohms or --over-range, not both.";

    internal const string NextHeading = "Probe next";

    internal const string SuspectsHeading = "Go back to these pins";

    internal const string Proven = "Every check passed: the repair is proven.";

    internal const string NothingNext = "Nothing is left to probe.";

    internal const string Caution = "Probe with the equipment unplugged, batteries out and capacitors discharged.";

    internal static readonly string[] Columns = [">no.", "check", "expect", "standing", "reading", "remark"];

    internal static string NoSuchNumber(int count) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"--number takes numbers from 1 to {count}, like 4 or 1-12,15.");

    internal static string Standing(CheckStanding standing) => standing switch
    {
        CheckStanding.Open => "open",
        CheckStanding.Stale => "probe again",
        CheckStanding.Passed => "passed",
        CheckStanding.Failed => "FAILED",
        _ => throw new ArgumentOutOfRangeException(nameof(standing)),
    };

    internal static string Limits(string continuity, string isolation) =>
        $"A way that conducts reads at most {continuity} ohm, places that are apart at least {isolation} ohm (judgement); you decide.";
}
