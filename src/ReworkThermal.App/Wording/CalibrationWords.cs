namespace ReworkThermal.App.Wording;

/// <summary>Words of a calibration.</summary>
internal static class CalibrationWords
{
    internal const string NothingObserved = "no touch has been observed on this model of board yet";

    internal const string Forgotten = "everything observed on this model of board is forgotten";

    internal const string TouchesHeading = "Observed touches";

    internal const string LearnedHeading = "What they taught";

    internal const string PreheaterAndBoard = "--preheater and --board belong together: name the preheater and the temperature of the settled board.";

    internal const string AlloyAndMass = "--with and --added belong together: name the alloy and its mass in milligrams.";

    internal const string OneSighting = "say what was seen, once: --flowed SECONDS, --not-flowed SECONDS, or --probe PLACE with --after and --reading.";

    internal const string ProbeNeedsReading = "--probe needs --after SECONDS and --reading CELSIUS.";

    internal const string ReadingNeedsProbe = "--after and --reading belong to a thermocouple: say with --probe where it was.";

    internal const string UsedFrom = "the next plan for this board uses it and says so";

    internal const string Aside = "set aside: nothing within the ranges explains it together with the others";

    internal const string RangeNote = "Ranges are the middle eight tenths. Before: from the profiles. After: from the curvature at the most likely values, so only as good as the model and the stated errors of eye and thermocouple.";

    internal static readonly string[] TouchColumns = [">", "setting", "seen", ">expected before", ">after", ">off by", ""];

    internal static readonly string[] LearnedColumns = ["input", ">before", "range", ">after", "range"];

    internal static string Heading(string board) => $"Calibration of {board}";

    internal static string Setting(string iron, string set, string? board, string solder) =>
        board is null ? $"{iron} at {set}, no preheat, {solder}" : $"{iron} at {set}, board at {board}, {solder}";

    internal static string Flowed(string after) => $"flowed after {after}";

    internal static string FlowedWithin(string within) => $"flowed within {within}, not timed closer";

    internal static string NotFlowed(string within) => $"did not flow in {within}";

    internal static string Reading(string probe, string after, string value) => $"{probe} at {value} after {after}";

    internal static string Deviations(string number) => $"{number} s.d.";

    internal static string FromTo(string low, string high) => $"{low} to {high}";
}
