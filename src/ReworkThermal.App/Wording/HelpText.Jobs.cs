namespace ReworkThermal.App.Wording;

/// <summary>Texts of the commands about jobs.</summary>
internal static partial class HelpText
{
    internal const string Job = "The job, by identity, its beginning, or label; may be left out when only one is open.";

    internal const string Jobs = "Jobs: open one, list them, see where one stands, describe it, close it.";

    internal const string JobNew = "Open a job for a board that came in.";

    internal const string JobList = "List all jobs.";

    internal const string JobShow = "Show a job: what it is about, what was last done, what is next.";

    internal const string JobClose = "Close a job: the work is done.";

    internal const string JobReopen = "Reopen a closed job.";

    internal const string JobRevise = "Describe a job better: label, board, joint, connector, solder.";

    internal const string JobPins = "Enter the pins of the connector, or write them to a file.";

    internal const string JobPad = "Enter a pad that is no connector pin, such as the landing pad of a wire.";

    internal const string JobLook = "Record what a pad looks like.";

    internal const string JobPrior = "State what is assumed about heat before arrival.";

    internal const string JobNote = "Write a note.";

    internal const string AcceptPad = "Pad that the plan is for, as with plan --pad: it starts from what the pad has had.";
    internal const string JobAccept = "Accept a plan: search the request again and work by one of its plans.";

    internal const string Label = "What you call the job, 1 to 200 characters.";

    internal const string JobBoard = "Board profile, a file of profiles/boards without its ending.";

    internal const string JobJoint = "Joint profile that stands for the pins, a file of profiles/joints without its ending.";

    internal const string JobConnector = "Connector profile, a file of profiles/connectors without its ending.";

    internal const string JobSolder = "Solder that arrived in the joints, as percent by mass or by name.";

    internal const string JobLeadFree = "Only lead-free alloys may be brought to this board.";

    internal const string Pinout = "Pin-out, a file of profiles/pinouts without its ending.";

    internal const string PinsFrom = "Read pins from a file of comma-separated values.";

    internal const string PinsTo = "Write the pins, with what was seen last, as comma-separated values.";

    internal const string Force = "Replace the file if it is there.";

    internal const string Pad = "A pad.";

    internal const string Pads = "Pads, with commas between them.";

    internal const string PadDescription = "What the pad is.";

    internal const string PadJoint = "Joint profile that it is judged as, if it is another than the pins'; a file of profiles/joints without its ending.";

    internal const string PadStateWord = "What it looks like";

    internal const string PriorWord = "What is assumed";

    internal const string Note = "A note to go with it.";

    internal const string NoteText = "The text.";

    internal const string Reason = "Why.";

    internal const string PlanNumber = "Number of the plan in the answer of 'plan'; 1 when left out.";

    internal const string Touches = "Touches: log what a tool did to a pad, take a mistake back, list them.";

    internal const string TouchLog = "Log a touch: pads, seconds and tool settings (its temperature is simulated), or a measured temperature series.";

    internal const string TouchVoid = "Mark an entry as a mistake: it stays readable and stops counting.";

    internal const string TouchList = "List the touches of a job.";

    internal const string TouchDrop = "Say that a touch that was started never gave heat.";

    internal const string Purpose = "What the touch was for";

    internal const string Seconds = "How long the tool was on.";

    internal const string NextSeconds = "How long the next touch shall last; without it the plan's dwell, or 3 s.";

    internal const string Added = "Alloy that was added, by name or composition.";

    internal const string AddedMass = "Metal that was added.";

    internal const string Mix = "What the joint held while it was hot; without it the mix is computed from what was logged.";

    internal const string Melted = "Whether the solder melted; without it the simulation or the series decides";

    internal const string Series = "Measured temperature at the pad, as comma-separated values with the columns time_s and temperature_c; used as it is.";

    internal const string At = "When the touch began, like 2026-03-01T09:30:00Z; without it, so many seconds ago as it lasted.";

    internal const string Ends = "Number of the started touch that this one ends.";

    internal const string Entry = "Number of the entry.";

    internal const string IronName = "Iron profile, a file of profiles/irons without its ending.";

    internal const string IronSet = "Set temperature of the iron.";

    internal const string AirName = "Nozzle profile, a file of profiles/air without its ending.";

    internal const string AirSet = "Set temperature of the hot air.";

    internal const string AirFlow = "Flow of the hot air.";
    internal const string AirDistance = "Distance of nozzle and board; 4 nozzle diameters when left out.";

    internal const string PreheaterName = "Preheater profile, a file of profiles/preheat without its ending.";

    internal const string PreheatSet = "Set temperature of the preheater.";

    internal const string Bath = "Temperature of a fountain or bath of molten solder that the joint was put in.";

    internal const string BoardTemperature = "Board temperature when the touch begins, if you measured it.";

    internal const string Contact = "How the tip meets the joint; tinned when left out";
    internal const string Side = "Face of the board that the tools work on; the bottom for a hole and the top for a surface joint when left out";

    internal const string Budgets = "Heat budgets of pads.";

    internal const string BudgetShow = "Show how much of its heat budget every pad has used; with --pad one pad in full, with the next touch and the pull check.";

    internal const string Now = "Temperature that pads and joints have now; room temperature when left out.";

    internal const string Checks = "Electrical checks: what to probe next, what was probed, what is proven.";

    internal const string ChecksList = "List every check with where it stands.";

    internal const string ChecksNext = "Say what to probe next and what to expect.";

    internal const string ChecksPass = "Record that a check was as expected.";

    internal const string ChecksFail = "Record that a check was not as expected.";

    internal const string ChecksRead = "Record what the meter showed; the limits decide whether it passes.";

    internal const string CheckNumber = "Numbers of checks in the list, like 4 or 1-12,15; the next one to probe when left out.";

    internal const string Ohms = "What the meter showed, leads taken off.";

    internal const string OverRange = "The meter showed more than it can.";

    internal const string Wires = "Jumper wires: judge one before it is laid, record it, list them.";

    internal const string WireJudge = "Work out a wire at its task: resistance, voltage drop, temperature, whether it is fit.";

    internal const string WirePair = "Work out a differential pair over wires: skew, share of the bit time, impedance.";

    internal const string WirePlan = "Find iron settings for the touch that solders the end of a wire to a pad of the job.";

    internal const string WireSolder = "Solder that the wire is set with, by name or composition.";

    internal const string WireRun = "Record a wire that was laid; its two soldering touches are logged with 'touch log'.";

    internal const string WireList = "List the wires of a job.";

    internal const string Awg = "American wire gauge of the conductor.";

    internal const string WireLength = "Length of the wire.";

    internal const string WireCurrent = "Current it carries.";

    internal const string WireSupply = "Voltage of the supply it carries, if it is a supply wire.";

    internal const string WireKindName = "Kind of wire, a file of profiles/wires without its ending.";

    internal const string WireAmbient = "Temperature of air and board; 25 when left out.";

    internal const string CrossesCopper = "The wire crosses bare copper, joints or vias.";

    internal const string FirstLeg = "Length of the wire in one leg; 0 when that leg is the track itself.";

    internal const string SecondLeg = "Length of the wire in the other leg.";

    internal const string Spacing = "Distance of the wires from centre to centre, if they are kept together.";

    internal const string BitRate = "Bits per second on the pair, in millions.";

    internal const string WireFrom = "Pad it starts at.";

    internal const string WireTo = "Pad it ends at.";

    internal const string PairName = "Differential pair it serves.";

    internal const string Report = "The record of a job, to hand over: HTML for screen and paper, Markdown.";

    internal const string ReportHtml = "Write one self-contained HTML file.";

    internal const string ReportMarkdown = "Write Markdown.";

    internal const string StoreCare = "The job store: backup, restoring a backup, export, import, examination.";

    internal const string StoreBackup = "Write a copy of the whole store.";

    internal const string StoreRestore = "Put a backup in the place of the store, after checking it; the store before is kept under a dated name.";

    internal const string BackupFile = "The backup to bring back.";

    internal const string StoreExport = "Write jobs as JSON; all of them, or the one named with --job.";

    internal const string StoreImport = "Read jobs from an exported file; jobs that are there already must begin alike.";

    internal const string StoreCheck = "Read everything in the store and judge it.";

    internal const string TargetFile = "The file to write.";

    internal const string SourceFile = "The file to read.";
}
