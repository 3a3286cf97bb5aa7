using System.Globalization;
using ReworkThermal.App.Screens.State;

namespace ReworkThermal.App.Wording;

/// <summary>Words that every screen uses.</summary>
internal static class ScreenWords
{
    internal const string Yes = "yes";
    internal const string No = "no";
    internal const string Unknown = "not known yet";
    internal const string Kept = "Kept.";
    internal const string Stays = "Still here.";
    internal const string AllSaved = "all saved";
    internal const string Saving = "saving ...";
    internal const string NotSaved = "NOT SAVED";
    internal const string ElsewhereKey = ", Ctrl+W: write elsewhere";
    internal const string ElsewhereLabel = "write all jobs to a new file";
    internal const string ElsewhereHint = "the work goes on in that file";
    internal const string NoJob = "no job open";
    internal const string OpenJobFirst = "Open a job first: 1, then N for a new one.";
    internal const string JobClosed = "The job is closed; nothing more can be recorded in it.";
    internal const string JobGone = "This job is not in the store any more.";
    internal const string TextNeeded = "write something, or Esc to give up";
    internal const string ReasonNeeded = "the record needs a reason; write one, or Esc to give up";
    internal const string EntryKeys = "Enter keeps   Ctrl+U empties   Esc gives up";
    internal const string EntryKeysShort = "Enter, Esc";
    internal const string EntryKeysWithOptions = "up/down chooses   Enter keeps   Ctrl+U empties   Esc gives up";
    internal const string GeneralKeys = "1-5 places   ? help   ! cautions   Q leave";
    internal const string HelpKey = "? help";
    internal const string LeaveQuestion = "Leave the program? Everything is saved.";
    internal const string LeaveQuestionUnsaved = "Leave the program? The last entry is NOT SAVED; Ctrl+W writes all jobs to another file.";
    internal const string LeaveQuestionDuringTouch = "A touch is running. It stays open in the record and is offered for completion next time.";
    internal const string LeaveQuestionDuringEntry = "Leave the program? What you are typing is kept and offered at the next start.";
    internal const string LeaveKeys = "Y leaves   any other key stays";
    internal const string DraftKeys = "Enter takes it up   N throws it away   Esc puts it off until the next start";
    internal const string DraftKeysOfNoJob = "N throws it away   Esc puts it off until the next start";
    internal const string DraftThrownAway = "Thrown away.";
    internal const string DraftPutOff = "Kept; it is offered again at the next start.";
    internal const string AnyKeyBack = "any key: back";
    internal const string TooSmall = "This window is too small: 60 columns by 16 rows at least, 80 by 24 to see everything. Nothing is lost.";
    internal const string ReadingShelf = "reading alloys and profiles ...";
    internal const string NoShelf = "alloys and profiles could not be read";
    internal const string Budget = "heat budget";
    internal const string BudgetUnknown = "not known";

    internal const string NeedsTerminal =
        "the screens need a terminal for both keys and display, and there is none here. Commands work without one: try 'rework-thermal --help'.";

    internal static string PlaceName(Place place) => place switch
    {
        Place.Job => "Job",
        Place.Mix => "Mix",
        Place.Plan => "Plan",
        Place.Clock => "Clock",
        Place.Record => "Record",
        _ => throw new ArgumentOutOfRangeException(nameof(place)),
    };

    internal static string DraftOffer(string job, string label, string text) => $"Unfinished{OfJob(job)}, {label}: '{text}'";

    internal static string DraftOfNoJob(string job, string label, string text) => $"Unfinished{OfJob(job)}, which is not in this store, {label}: '{text}'";

    internal static string DraftNotRead(string path, string reason) => $"What was being typed last time cannot be read from '{path}': {reason}";

    internal static string DraftNotKept(string path, string reason, string label, string text) =>
        $"rework-thermal: what was being typed could not be kept in '{path}' ({reason}). {label}: {text}";

    internal static string PadWord(string pad) => $"pad {pad}";

    internal static string Refused(string reason) => $"Not kept: {reason}.";

    internal static string WrittenElsewhere(string path) => $"All jobs are in {path} now, and the work goes on there. Next time: --store {path}";

    internal static string ShelfBroken(string reason) => $"The data folders cannot be used: {reason}";

    internal static string Fault(string message) => $"A fault of the program itself, not of your input: {message}";

    internal static string NotANumber(string text, double least, double most, string unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"'{text}' is no number; write one with a decimal point, {Range(least, most, unit)}");

    internal static string OutOfLimits(string text, double least, double most, string unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"{text} is outside what is possible: {Range(least, most, unit)}");

    internal static string WholeNumber(string text) => $"{text} is not a whole number";

    internal static string YesOrNo(string text) => $"'{text}' is neither yes nor no";

    internal static string NotKnown(string text, IReadOnlyList<string> known) => $"'{text}' is not known; there are: {string.Join(", ", known)}";

    internal static string Touching(string seconds) => $"TOUCH {seconds} s";

    private static string OfJob(string job) => job.Length > 0 ? $" in '{job}'" : string.Empty;

    private static string Range(double least, double most, string unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"{least:0.###} to {most:0.###}{(unit.Length > 0 ? " " + unit : string.Empty)}");
}
