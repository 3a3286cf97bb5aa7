using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Wording;

/// <summary>Sentences about jobs.</summary>
internal static class JobWords
{
    internal const string NoOpenJob = "there is no open job in this store; open one with 'job new', or name a closed one with --job.";

    internal const string NoJobs = "There are no jobs in this store yet.";

    internal const string NoJoint = "the job names no joint, so its pads cannot be judged; name one with 'job revise --joint NAME'.";

    internal const string Unknown = "-";

    internal const string NotStated = "not stated";

    internal const string StatusName = "status";

    internal const string LimitName = "limit";

    internal const string Voided = " [voided]";

    internal const string HistoryHeading = "Last done";

    internal const string NextHeading = "Next";

    internal const string PadsHeading = "Pads";

    internal const string PlanHeading = "Plan in force";

    internal const string ChecksHeading = "Electrical checks";

    internal const string WiresHeading = "Wires";

    internal const string JustOnePad = "name just one pad with --pad.";

    internal const string JobsTitle = "Jobs";

    internal const string NoTouches = "No touch is logged.";

    internal const string LeadFreeOnly = "only lead-free alloys may be brought to this board";

    internal const string MeasuredTemperature = "measured";

    internal const string SimulatedTemperature = "simulated";

    internal const string NoTemperature = "none kept";

    internal static readonly string[] JobColumns = ["job", "label", "status", "opened (UTC)", "last entry (UTC)", ">entries"];

    internal static readonly string[] PadColumns = ["pad", "name", "arrived", "now", ">touches", "earlier heat"];

    internal static readonly string[] TouchColumns = [">entry", "began (UTC)", "purpose", "pads", ">dwell", "tools", ">peak °C", "temperature", "remark"];

    internal static string Title(JobHeader job) => $"Job {job.Id}: {VisibleText.Of(job.Brief.Label)}";

    internal static string Title(JobState job) => $"Job {job.Id}: {VisibleText.Of(job.Brief.Label)}";

    internal static string Status(JobStatus status) => status == JobStatus.Open ? "open" : "closed";

    internal static string Time(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    internal static string OnlyOpenJob(JobHeader job) => $"This is about job {job.Id}, the only open one; --job names another.";

    internal static string NoSuchJob(string text) => $"there is no job '{VisibleText.Of(text)}' in this store; 'job list' shows them.";

    internal static string WhichJob(string? text, IReadOnlyList<JobHeader> fitting) =>
        $"{(text is null ? "several jobs are open" : $"'{VisibleText.Of(text)}' fits several jobs")}; name one with --job: {string.Join(", ", fitting.Take(12).Select(h => h.Id.Value))}.";

    internal static string NotRecorded(string reason) => $"not recorded: {VisibleText.Of(reason)}.";

    internal static string Recorded(int number, string phrase) => string.Create(CultureInfo.InvariantCulture, $"Recorded as entry {number}: {phrase}.");

    internal static string RecordedMany(int count, int first, int last) => count == 1
        ? string.Create(CultureInfo.InvariantCulture, $"Recorded as entry {last}.")
        : string.Create(CultureInfo.InvariantCulture, $"Recorded as entries {first} to {last}.");

    internal static string BadPadName(string text, string rule) => $"--pad '{VisibleText.Of(text)}': {rule}.";

    internal static string UnknownProfile(string kind, string name, IEnumerable<string> known) =>
        $"there is no {kind} profile '{VisibleText.Of(name)}'; known: {string.Join(", ", known.Order(StringComparer.Ordinal))}.";

    internal static string NoBoard(string joint, IReadOnlyCollection<string> fitting) => fitting.Count == 0
        ? $"no board at hand fits the joint '{VisibleText.Of(joint)}'; name one with 'job revise --board NAME' to see why."
        : $"the job names no board, and the joint '{VisibleText.Of(joint)}' fits {string.Join(", ", fitting)}; name one with 'job revise --board NAME'.";

    internal static string OnlyBoard(string board) => $"The joint is on the board '{board}', the only one at hand that it fits.";

    internal static string OneProfileForAllPins(string joint) => $"Every pad is judged as the joint '{VisibleText.Of(joint)}': one profile stands for all pins.";

    internal static string OwnJointGone(PadId pad, string joint) =>
        $"Pad {pad} should be judged as the joint '{VisibleText.Of(joint)}', but there is no such profile or it does not fit the board: it is judged like the pins.";

    internal static string RemovedEachTime(string method, string share) => $"A wick is taken to remove {share} of what is molten ({method}).";

    internal static string AssumedSolder(string solder) => $"The joints are taken to have arrived with {solder}, since the job names no solder.";

    internal static string NothingToRevise => "say what is known better: --label, --board, --joint, --connector, --solder or --lead-free.";

    internal static string OnePinSource => "name either --pinout NAME or --from FILE, to enter pins; or --to FILE, to write them.";

    internal static string Written(string path) => $"Written to {path}.";

    internal static string PlanNumber(int count) => string.Create(CultureInfo.InvariantCulture, $"--number must lie between 1 and {count}: so many plans hold every limit.");

    internal static string VoidedBecause(string reason) => $"VOIDED: {reason}";

    internal static string Wire(PadId from, PadId to, string wire) => $"{from} to {to}: {wire}";

    internal static string Interrupted(int number) => string.Create(CultureInfo.InvariantCulture, $"Touch {number} was started and never ended.");

    internal static string Coverage(int passed, int failed, int open, int stale) => string.Create(
        CultureInfo.InvariantCulture,
        $"{passed} passed, {failed} failed, {open} not probed yet, {stale} to probe again");
}
