using System.Globalization;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the record.</summary>
internal static class ScreenRecordWords
{
    internal const string EntriesTitle = "Record, latest first (times UTC)";
    internal const string EntryKeys = "up/down entry   V void   N note   C checks   W write up   X export";
    internal const string CheckKeys = "up/down check   P pass   F fail   R reading   C record   W write up";
    internal const string NoChecks = "No checks: they follow from pins with a destination (1, then A: 1=VBUS 2=GND).";
    internal const string ExportLabel = "write the record as JSON to";
    internal const string PathNeeded = "name a file";
    internal const string ReadingLabel = "meter shows, ohm (or OL)";
    internal const string OverRange = "OL";
    internal const string JudgeFirst = "say P or F first; the reading is added to it";
    internal const string Void = "VOID";
    internal const string Writing = "writing the record ...";
    internal const string Untouched = "Nothing was written; the files are as they were.";
    internal const string ReplaceKeys = "Y replaces them   any other key leaves them";

    internal static string RecordName(JobId job, string ending) => $"record-{job}.{ending}";

    internal static string Written(IReadOnlyList<string> paths) =>
        $"Written: {paths[0]}{string.Concat(paths.Skip(1).Select(p => $" and {Path.GetFileName(p)}"))}";

    internal static string There(IReadOnlyList<string> paths) => $"Replace? There already: {paths[0]}{string.Concat(paths.Skip(1).Select(p => $" and {Path.GetFileName(p)}"))}";

    internal static string Exported(string path) => $"The record is in {path}.";

    internal static string ExportName(JobId job) => $"job-{job}.json";

    internal static string OrOverRange(string complaint) => $"{complaint}, or OL for open";

    internal static string VoidLabel(int number) => string.Create(CultureInfo.InvariantCulture, $"entry {number} does not count, because");

    internal static string VoidAlready(int number) => string.Create(CultureInfo.InvariantCulture, $"Entry {number} does not count already.");

    internal static string VoidBy(VoidedEntry voided) => string.Create(CultureInfo.InvariantCulture, $"{Void} by {voided.By}: {voided.Reason}");

    internal static string Progress(CheckProgress checks) => string.Create(
        CultureInfo.InvariantCulture,
        $"Checks, board unpowered: {checks.Passed} passed, {checks.Failed} FAILED, {checks.Stale} to repeat, {checks.Open} open");

    internal static string Judged(CheckLine line, CheckResult result) => $"{Check(line.Check)}: {(result == CheckResult.Pass ? "passed" : "FAILED")}.";

    internal static string Standing(CheckStanding standing) => standing switch
    {
        CheckStanding.Open => "open",
        CheckStanding.Stale => "repeat",
        CheckStanding.Passed => "passed",
        CheckStanding.Failed => "FAILED",
        _ => throw new ArgumentOutOfRangeException(nameof(standing)),
    };

    internal static string Check(ElectricalCheck check) => check switch
    {
        ElectricalCheck.Continuity continuity => $"pin {continuity.Pin} conducts",
        ElectricalCheck.Isolation isolation => $"pins {isolation.First} and {isolation.Second} apart",
        ElectricalCheck.GroundIsolation ground => $"pin {ground.Pin} apart from ground",
        _ => "check",
    };

    internal static string Expected(ExpectedReading expected) => expected switch
    {
        ExpectedReading.Conducts { Kind: ReferencePoint.Ground } => "to ground",
        ExpectedReading.Conducts { Kind: ReferencePoint.Shell } => "to the shell",
        ExpectedReading.Conducts conducts => $"to {conducts.Place}",
        ExpectedReading.Open => "must be open",
        _ => string.Empty,
    };

    internal static string Reading(MeterReading? reading) => reading switch
    {
        MeterReading.Shown shown => string.Create(CultureInfo.InvariantCulture, $"{shown.Resistance.Ohms:0.###} ohm"),
        MeterReading.OverRange => OverRange,
        _ => string.Empty,
    };
}
