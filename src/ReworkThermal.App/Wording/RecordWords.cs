using System.Globalization;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the record that is handed over.</summary>
internal static class RecordWords
{
    internal const string WarningMark = "Note well:";

    internal const string ArrivedHeading = "What arrived";

    internal const string DoneHeading = "What was done";

    internal const string AlloysHeading = "Alloys and lead";

    internal const string HeatHeading = "Heat of the pads";

    internal const string FinalHeading = "The joint at the end";

    internal const string CautionsHeading = "Limits and cautions";

    internal const string BasisHeading = "Assumptions, calibration and sources";

    internal const string Board = "board";

    internal const string Joint = "joint";

    internal const string Connector = "connector";

    internal const string SolderOnArrival = "solder on arrival";

    internal const string Opened = "record opened";

    internal const string Pins = "pins";

    internal const string FinalPad = "joint worked on most";

    internal const string FinalSolder = "solder";

    internal const string StillLiquid = "still liquid on real cooling";

    internal const string FinalUnknown = "No joint was worked on, or its solder is not known.";

    internal const string NoChecks = "No pins are entered, so there is nothing to check.";

    internal const string BudgetTitle = "Share of the heat budget used, by pad";

    internal const string TracesTitle = "Temperature between pad and laminate";

    internal const string InterfaceAxis = "interface, °C";

    internal const string NoLead = "By this record no alloy with more than 0.1 % lead was in these joints or was brought to them.";

    internal const string LeadBrought = "An alloy with more than 0.1 % lead was brought to this board. Its joints are no longer lead-free (limit 0.1 % by mass in a homogeneous material, Directive 2011/65/EU, annex II): a lead-free marking no longer holds for them. Mark the board, and check what the law allows for this product.";

    internal const string LeadArrived = "The joints arrived with more than 0.1 % lead: they were not lead-free before the work and are not after it.";

    internal const string LeadUnknown = "The composition of an alloy is not known, so nothing is said here about lead.";

    internal const string NothingMeasured = "Nothing was timed or measured at this board: contact and copper load are those of the profiles, not calibrated.";

    internal static readonly string[] WorkColumns = [">no.", "recorded (UTC)", "what"];

    internal static readonly string[] AlloyColumns = ["alloy", "for", ">touches", ">added", ">lead"];

    internal static readonly string[] PadColumns = ["pad", ">touches", ">melts", ">peak °C", "used (range)", "band", "governed by (support)", "earlier heat"];

    internal static readonly string[] Cautions =
    [
        "Temperatures are computed unless marked as measured; a pad that is 10 K hotter than computed ages about twice as fast.",
        "Budget limits, the loss of bond per melt and every band are judgement; the support of each figure is named. Nothing here is a chance of failure.",
        "Electrical checks prove the pins as they were probed, unpowered; they do not replace a functional test or the safety tests that the equipment needs.",
        "Mains-powered and safety-related equipment: local codes and licensed practice come first; have insulation and protective earth tested by whoever may do so.",
        "Solder and flux residue: wash hands; leaded and bismuth waste goes to collection, not to the bin.",
    ];

    internal static string Title(RecordReport record) => $"Record of rework: {VisibleText.Of(record.Job.Brief.Label)}";

    internal static string Subtitle(RecordReport record) =>
        $"Job {record.Job.Id}, {JobWords.Status(record.Job.Status)}, {record.Job.LastNumber.ToString(CultureInfo.InvariantCulture)} entries, the last of {JobWords.Time(record.Job.Entries[^1].At)} UTC.";

    internal static string PinCount(int count) => count.ToString(CultureInfo.InvariantCulture);

    internal static string Seen(string state, string pads) => $"Seen {state} on arrival: {pads}.";

    internal static string NotLookedAt(int count) => string.Create(CultureInfo.InvariantCulture, $"Pads that nobody looked at before the first heat: {count}.");

    internal static string Voided(string reason) => $" [VOIDED: {reason}]";

    internal static string NotJudged(string reason) => $"The pads could not be judged: {reason}";

    internal static string NotTouched(int count) => string.Create(CultureInfo.InvariantCulture, $"Pads without a touch in this record: {count}; their bars show earlier heat only, as it is assumed or stated.");

    internal static string BudgetAlt(int pads, string worst, string share, string band) => string.Create(
        CultureInfo.InvariantCulture,
        $"Bars of {pads} pads: bar to the central share, broken line over the whole range, upright line at the limit. Most used is pad {worst} with {share}, band {band}.");

    internal static string BarWords(string central, string high, string band, bool beyond) => $"{central}, {band} (to {high}{(beyond ? " →" : string.Empty)})";

    internal static string TracesAlt(int count, string peak) => string.Create(
        CultureInfo.InvariantCulture,
        $"Temperature against time for {count} touches, the hottest of this record; the highest temperature is {peak} °C.");

    internal static string TraceName(int entry, string pad) => string.Create(CultureInfo.InvariantCulture, $"entry {entry}, pad {pad}");

    internal static string CurveAlt(string solder, string solidus, string liquidus) => $"Liquid share of {solder} against temperature: nothing is liquid below {solidus}, everything from {liquidus} on.";

    internal static string At100And140(string at100, string at140) => $"{at100} at 100 °C, {at140} at 140 °C";

    internal static string PadSolder(string pad, string amount, string solder) => $"Pad {pad}: {amount} of {solder} by this record.";

    internal static string NotClean(string share) => $"{share} of this joint is still liquid at 140 °C on real cooling: dilution alloy was left behind, and the joint is weak when warm.";

    internal static string AllProven(int count) => string.Create(CultureInfo.InvariantCulture, $"All {count} checks passed and none was disturbed afterwards.");

    internal static string NotProven(string coverage) => $"The repair is not proven: {coverage}.";

    internal static string PassedList(IEnumerable<string> checks) => $"Passed: {string.Join("; ", checks)}.";

    internal static string Wire(string from, string to, string wire) => $"From {from} to {to}: {wire}.";

    internal static string Measured(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} timed measurements were taken at this board:");

    internal static string Program(string version, string fingerprint) => $"Written by rework-thermal {version} with data files {fingerprint}; the same job and data give the same record.";

    internal static string Sources(IReadOnlyList<string> sources) => $"Sources: {string.Join(" · ", sources)}";

    internal static string FigureElsewhere(string description) => $"Figure in the HTML record: {description}";
}
