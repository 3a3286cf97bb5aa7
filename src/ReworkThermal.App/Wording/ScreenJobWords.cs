using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the job's place.</summary>
internal static class ScreenJobWords
{
    internal const string JobsTitle = "Jobs";
    internal const string NoJobs = "No job yet. Press N to take in a board.";
    internal const string ReadingJobs = "reading the jobs ...";
    internal const string JobsKeys = "up/down chooses   Enter takes up   N new job";
    internal const string NewJobLabel = "name of the job";
    internal const string JobOpened = "The job is open. Next: board and joint, then A to add pins.";
    internal const string LabelNeeded = "a job needs a name";
    internal const string JobTitle = "Job";
    internal const string PinsTitle = "Pins";
    internal const string NoPins = "No pins yet. Press A and list them: 1=VBUS 2=GND 3=NC / 4-7";
    internal const string NoneShown = "No pin fits the filter. Press / and empty it.";
    internal const string FieldKeys = "Enter edits   Tab pins   A add pins   N note   J jobs";
    internal const string PinKeys = "S sound  L loose  M missing  W wired   H heat before   N note   Enter to clock";
    internal const string PinsToAdd = "pins to add";
    internal const string PinsHint = "1=VBUS 2=GND 4=SHELL, 5-9 without checks, / next row";
    internal const string FilterLabel = "show only pins with";
    internal const string PadDescription = "entered without a destination";
    internal const string ChoosePadFirst = "Choose a pin first: Tab goes to them.";

    internal static readonly string[] Columns = ["pin", "leads to", "arrived", "now", "before", "heat budget", "touches"];

    internal static string Field(BriefField field) => field switch
    {
        BriefField.Label => "name",
        BriefField.Board => "board",
        BriefField.Joint => "joint",
        BriefField.Connector => "connector",
        BriefField.BaseSolder => "base solder",
        BriefField.LeadFreeOnly => "lead-free only",
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static string State(PadState? state) => state switch
    {
        PadState.Sound => "sound",
        PadState.Loose => "LOOSE",
        PadState.Missing => "MISSING",
        PadState.Wired => "wired",
        null => "?",
        _ => throw new ArgumentOutOfRangeException(nameof(state)),
    };

    internal static string Prior(PriorCondition? prior) => prior switch
    {
        PriorCondition.Sound => "assembly",
        PriorCondition.Touched => "reworked",
        PriorCondition.Scorched => "SCORCHED",
        null => "?",
        _ => throw new ArgumentOutOfRangeException(nameof(prior)),
    };

    /// <summary>Everything about a pad that the filter looks at.</summary>
    internal static string PadLine(PadLedger pad) =>
        $"{pad.Pad} {pad.Pin?.Name ?? pad.Description} {State(pad.AsArrived)} {State(pad.State)} {Prior(pad.Prior)}";

    internal static string NoteLabel(PadId? pad) => pad is null ? "note about the job" : $"note about pad {pad}";

    internal static string PinTwice(string name) => $"'{name}' is there twice, or in the job already";

    internal static string NoDestination(string name) => $"'{name}=' leads nowhere; write where the pin goes, or leave the = away";

    internal static string PinCount(int most) => string.Create(CultureInfo.InvariantCulture, $"name 1 to {most} pins, such as 1=VBUS 2=GND 3-6");

    internal static string AlreadyThat(PadId pad, PadState state) => $"Pad {pad} is {State(state)} already.";

    internal static string NowThat(PadId pad, PadState state) => $"Pad {pad}: {State(state)}.";

    internal static string HeatStated(PadId? pad, PriorCondition heat) =>
        $"{(pad is null ? "All pads" : $"Pad {pad}")}: heat before arrival taken as {Prior(heat)}. H steps on, Shift+H for all.";

    internal static string Filtered(int shown, int all, string filter) => string.Create(CultureInfo.InvariantCulture, $"Pins: {shown} of {all} with '{filter}'");

    internal static string JobLine(JobHeader job) => string.Create(
        CultureInfo.InvariantCulture,
        $"{job.Id}  {job.LastAt:yyyy-MM-dd HH:mm}  {job.LastNumber,4} entries  {(job.Status == JobStatus.Closed ? "closed  " : "open    ")}{job.Brief.Label}");

    internal static string Identity(JobState job) => string.Create(
        CultureInfo.InvariantCulture,
        $"{job.Id}, {job.LastNumber} entries, {(job.Status == JobStatus.Closed ? "closed" : "open")} since {job.Entries[0].At:yyyy-MM-dd}");

    internal static string Touches(PadLedger pad)
    {
        double seconds = pad.Heats.Sum(h => h.Touch.Dwell.Seconds);
        return pad.Heats.Count == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{pad.Heats.Count}, {seconds:0.0} s");
    }
}
