using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Wording;

/// <summary>Entries of the record as one line each.</summary>
internal static class ScreenEventWords
{
    internal static string Line(JobEvent what) => what switch
    {
        JobEvent.JobOpened opened => $"job opened: {opened.Brief.Label}",
        JobEvent.BriefRevised revised => $"job is about: {Brief(revised.Brief)}",
        JobEvent.PinsRegistered registered => $"pins added: {string.Join(" ", registered.Pins.Select(p => $"{p.Number}={p.Name}"))}",
        JobEvent.PadRegistered registered => $"pad {registered.Pad} added: {registered.Description}",
        JobEvent.PadStateSeen seen => $"pad {seen.Pad} looked at: {ScreenJobWords.State(seen.State)}{Tail(seen.Note)}",
        JobEvent.PriorHeatStated stated =>
            $"{(stated.Pads.Count == 0 ? "all pads" : $"pad {string.Join(", ", stated.Pads)}")}: heat before arrival taken as {ScreenJobWords.Prior(stated.Heat)}{Tail(stated.Note)}",
        JobEvent.PlanAccepted accepted => $"plan kept: {accepted.Plan.Summary}",
        JobEvent.CautionsShown => "cautions shown and put away",
        JobEvent.TouchStarted started => $"touch begun: pad {string.Join(", ", started.Start.Pads)}, {ScreenClockWords.Purpose(started.Start.Purpose)}, {Tools(started.Start.Tools)}",
        JobEvent.ExposureLogged logged => Exposure(logged.Exposure),
        JobEvent.TouchDropped dropped => string.Create(CultureInfo.InvariantCulture, $"touch of entry {dropped.Start} gave no heat: {dropped.Reason}"),
        JobEvent.MeasurementTaken taken => Measurement(taken.Measurement),
        JobEvent.CheckDone done => $"check: {ScreenRecordWords.Check(done.Check)}: {(done.Result == Core.Jobs.Checking.CheckResult.Pass ? "passed" : "FAILED")} {ScreenRecordWords.Reading(done.Reading)}{Tail(done.Note)}",
        JobEvent.WireRun run => string.Create(CultureInfo.InvariantCulture, $"wire from {run.Wire.From} to {run.Wire.To}, {run.Wire.Length.Millimeters:0.#} mm{Tail(run.Note)}"),
        JobEvent.NoteTaken note => $"note{(note.Pad is null ? string.Empty : $" on pad {note.Pad}")}: {note.Text}",
        JobEvent.EntryVoided voided => string.Create(CultureInfo.InvariantCulture, $"entry {voided.Number} does not count: {voided.Reason}"),
        JobEvent.JobClosed closed => $"job closed{Tail(closed.Note)}",
        JobEvent.JobReopened reopened => $"job opened again: {reopened.Reason}",
        _ => what.GetType().Name,
    };

    private static string Exposure(Exposure exposure)
    {
        string melted = exposure.Pads.Any(p => p.Melted == true) ? ", melted" : string.Empty;
        string trace = exposure.Pads.All(p => p.Series is null) ? ", no temperatures" : string.Empty;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"touch: pad {string.Join(", ", exposure.Pads.Select(p => p.Pad))}, {exposure.Dwell.Seconds:0.0} s{melted}, {ScreenClockWords.Purpose(exposure.Purpose)}, {Tools(exposure.Tools)}{trace}{Tail(exposure.Note)}");
    }

    private static string Measurement(TimedMeasurement measurement) => measurement switch
    {
        TimedMeasurement.Flow flow => string.Create(CultureInfo.InvariantCulture, $"timed: pad {flow.Pad} flowed after {flow.TimeToFlow.Seconds:0.0} s"),
        TimedMeasurement.FlowedWithin by => string.Create(CultureInfo.InvariantCulture, $"seen: pad {by.Pad} flowed within {by.Within.Seconds:0.0} s"),
        TimedMeasurement.NotFlowed not => string.Create(CultureInfo.InvariantCulture, $"seen: pad {not.Pad} did not flow within {not.Within.Seconds:0.0} s"),
        TimedMeasurement.Reading reading => string.Create(
            CultureInfo.InvariantCulture,
            $"measured: {reading.Place} at pad {reading.Pad}, {reading.Shown.DegreesCelsius:0.#} °C after {reading.After.Seconds:0.0} s"),
        TimedMeasurement.Trace trace => $"measured trace: {trace.Place} at pad {trace.Pad}",
        _ => measurement.GetType().Name,
    };

    private static string Brief(JobBrief brief)
    {
        IEnumerable<string> parts = new[] { brief.Label, brief.Board, brief.Joint, brief.Connector, brief.BaseSolder, brief.LeadFreeOnly ? "lead-free only" : null }.OfType<string>();
        return string.Join(", ", parts);
    }

    private static string Tools(IReadOnlyList<ToolSetting> tools) => string.Join(" + ", tools.Select(ScreenClockWords.Tool));

    private static string Tail(string? note) => string.IsNullOrEmpty(note) ? string.Empty : $" ({note})";
}
