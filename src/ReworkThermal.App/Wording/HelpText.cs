using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Texts of <c>--help</c>.</summary>
internal static partial class HelpText
{
    internal const string Program =
        "Computes what a mixed solder joint melts at, what a plated barrel in this board needs to flow, and how much heat a pad has had.";

    internal const string Plain = "Terminal UI: no colour and no drawing characters; text carries everything.";

    internal const string Light = "Terminal UI: colours for a light background.";

    internal const string Store = "File of the job store; the usual place when not given.";

    internal const string Json = "Give the answer as JSON; field names carry their units.";

    internal const string Melt = "Melting behaviour of a solder or a mix.";

    internal const string Data = "The data files of alloys and profiles.";

    internal const string DataCheck = "Check every file in alloys and profiles: it can be read, its sources are listed, its published points are met.";

    internal const string Verify = "Compute every published figure that travels with the program anew, and show it beside the published one.";

    internal const string VerifyAll = "Show every figure, not only the worst of each area.";

    internal const string VerifyMarkdown = "Write the summary as a Markdown table.";

    internal const string Dilute =
        "What an added alloy does to the solder of a joint, and how much of it is needed; without --with all dilution alloys are ranked.";

    internal const string Joint = "Joint profile, a file of profiles/joints without its ending.";

    internal const string Board = "Board profile, a file of profiles/boards without its ending; may be left out when the joint fits only one.";

    internal const string Solder = "What is in the joint, as percent by mass like SnAg3Cu0.5, or the name of a solder.";

    internal const string With = "Alloy to add, by name.";

    internal const string Ratio = "Mass of the added alloy as a share of the mix, 0 to 0.9.";

    internal const string TargetFlow = "Flow temperature that the mix shall reach; finds the smallest amount.";

    internal const string Wire = "Diameter of the solder wire.";

    internal const string AllAlloys = "Compare every dilution alloy on file, not only the usual ones.";

    internal const string LeadFree = "Leave out alloys that contain lead.";

    internal const string Clean = "What add-melt-remove passes leave in a joint, and how many are enough before the refit.";

    internal const string FirstRatio = "Mass of the alloy added in the first pass as a share of the mix, 0 to 0.9.";

    internal const string Passes = "Number of passes; left out, the smallest number that is enough.";

    internal const string Refill = "Solder of the refit, as percent by mass or by name.";

    internal const string Removal = "How molten solder is taken out, a file of profiles/removal without its ending.";

    internal const string Copper = "Copper that the solder has taken up from barrel and pads.";

    internal const string Silver = "Silver that the solder has taken up from a finish.";

    internal const string GoldArea = "Gold-plated area of leg, pad or edge finger that the solder wets; with --gold-thickness.";

    internal const string GoldThickness = "Thickness of that gold; flash gold has 0.05 to 0.1 um, plated contacts 0.4 to 2.5 um (common practice, no source).";

    internal const string Heat = "Run a case of heat flow: temperatures at named places against time.";

    internal const string Case = "Case file (TOML): a joint on its board with tools, or a textbook problem.";

    internal const string Plan = "Plan the rework of one joint: alloy, amount, iron, preheat, dwell, latest stop, passes, heat budget.";

    internal static string Samples(int usual) => string.Create(
        CultureInfo.InvariantCulture,
        $"Benches to sample per plan for the spread of the time to flow; 0 for none, {usual} by default.");

    internal const string Request = "Request file (TOML): the joint, what is in it, what is on the bench, and the limits.";

    internal const string Curve = "Show liquid fraction, enthalpy and phases against temperature instead of the summary.";

    internal const string Csv = "Also write the figures to this file as comma-separated values.";

    internal const string Plot = "Also draw the figures to this file; its name ends in .svg or .png.";

    internal const string Composition =
        "Elements with percent by mass, like Sn96.5Ag3Cu0.5; the first may stand without a number as the balance, like SnAg3Cu0.5.";

    internal const string Why = "Explain one plan of the answer, by its number: every figure with its rule and what it rests on.";

    internal const string Compare = "Set two plans of the answer side by side, by their numbers.";

    internal const string Calibrate = "Learn from timed touches on a model of board: the next plan for it uses what they teach.";

    internal const string CalibrateAdd = "Add an observed touch and fit all of them again.";

    internal const string CalibrateShow = "Show what was observed and what it taught.";

    internal const string CalibrateForget = "Forget one observed touch, or all of a board.";

    internal const string Calibrations = "Folder with calibrations; by default one in your own data folder.";

    internal const string ForgetTouch = "Number of the touch to forget; all of them when not given.";

    internal const string ObservedIron = "Iron that was used, by its profile.";

    internal const string ObservedSet = "Its set temperature in °C.";

    internal const string ObservedPreheater = "Preheater that was used, by its profile.";

    internal const string ObservedBoard = "Temperature of the settled board over it in °C.";

    internal const string ObservedSolder = "Solder that was in the joint; that of the request when not given.";

    internal const string ObservedWith = "Alloy that was melted into it.";

    internal const string ObservedAdded = "Mass of that alloy in mg.";

    internal const string ObservedFlowed = "Seconds from contact until the whole joint flowed.";

    internal const string ObservedNotFlowed = "Seconds for which the tip was on without the joint flowing.";

    internal const string ObservedAfter = "Seconds from contact to the reading.";

    internal const string ObservedReading = "Temperature read, in °C.";

    internal static string ObservedProbe(IEnumerable<string> places) => $"Where a thermocouple was: {string.Join(", ", places)}.";

    internal const string Triage = "Foresee a whole repair before it is accepted: touches, bench time, pads by band, wires.";

    internal const string PlanJob = "Job of the pad: its logged touches count instead of the assumed earlier heat. Goes with --pad.";

    internal const string PlanPad = "Pad of that job.";

    internal const string TriageJob = "Job whose pins are meant, by identity or label.";

    internal const string TriageStore = "Job store to read; the usual one by default.";

    internal const string TriagePads = "Number of pads, when there is no job yet.";

    internal const string TriageMissing = "How many of them are gone.";

    internal const string TriageLoose = "How many of them are loose.";

    internal const string TriagePlan = "Number of the plan to work by; the first by default.";
}
