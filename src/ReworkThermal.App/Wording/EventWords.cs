using System.Globalization;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.App.Wording;

/// <summary>What happened, what was probed and what is next, as short phrases. Everything a person typed comes out neutralised.</summary>
internal static class EventWords
{
    /// <summary>What happened.</summary>
    internal static string Of(JobEvent what) => what switch
    {
        JobEvent.JobOpened opened => $"job opened: {Visible(opened.Brief.Label)}",
        JobEvent.BriefRevised revised => $"job described anew: {Visible(revised.Brief.Label)}",
        JobEvent.PinsRegistered pins => string.Create(CultureInfo.InvariantCulture, $"{pins.Pins.Count} pins entered"),
        JobEvent.PadRegistered pad => $"pad {pad.Pad} entered: {Visible(pad.Description)}",
        JobEvent.PadStateSeen seen => $"pad {seen.Pad} seen {seen.State.Word()}{Note(seen.Note)}",
        JobEvent.PriorHeatStated stated => $"earlier heat of {Pads(stated.Pads, "all pads")} stated as {stated.Heat.Word()}{Note(stated.Note)}",
        JobEvent.PlanAccepted accepted => $"plan accepted: {Visible(accepted.Plan.Summary)}",
        JobEvent.CautionsShown => "cautions shown",
        JobEvent.TouchStarted started => $"touch started to {started.Start.Purpose.Word()} at {Pads(started.Start.Pads, "no pad")}",
        JobEvent.ExposureLogged logged => Of(logged.Exposure),
        JobEvent.TouchDropped dropped => string.Create(CultureInfo.InvariantCulture, $"touch {dropped.Start} dropped: {Visible(dropped.Reason)}"),
        JobEvent.MeasurementTaken taken => Of(taken.Measurement),
        JobEvent.CheckDone done => $"{Of(done.Check)}: {Of(done.Result)}{Reading(done.Reading)}{Note(done.Note)}",
        JobEvent.WireRun run => $"wire laid from {run.Wire.From} to {run.Wire.To}: {Of(run.Wire)}{Note(run.Note)}",
        JobEvent.NoteTaken note => $"note{(note.Pad is null ? string.Empty : $" on pad {note.Pad}")}: {Visible(note.Text)}",
        JobEvent.EntryVoided voided => string.Create(CultureInfo.InvariantCulture, $"entry {voided.Number} voided: {Visible(voided.Reason)}"),
        JobEvent.JobClosed closed => $"job closed{Note(closed.Note)}",
        JobEvent.JobReopened reopened => $"job reopened: {Visible(reopened.Reason)}",
        _ => throw new ArgumentOutOfRangeException(nameof(what)),
    };

    internal static string Of(Exposure touch)
    {
        string added = touch.Added is null ? string.Empty
            : touch.Added.Mass is { } mass ? string.Create(CultureInfo.InvariantCulture, $", {mass.Milligrams:0.#} mg {Visible(touch.Added.Designation)} added")
            : $", {Visible(touch.Added.Designation)} added";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{(touch.Purpose is TouchPurpose.Other ? "touch" : "touch to " + touch.Purpose.Word())} at {Pads([.. touch.Pads.Select(p => p.Pad)], "no pad")}, {touch.Dwell.Seconds:0.#} s, {Tools(touch.Tools)}{added}{Note(touch.Note)}");
    }

    internal static string Tools(IEnumerable<ToolSetting> tools) => string.Join(" + ", tools.Select(Of));

    internal static string Of(ToolSetting tool)
    {
        string profile = tool.Profile is null ? string.Empty : Visible(tool.Profile) + " ";
        return tool switch
        {
            ToolSetting.Iron iron => string.Create(CultureInfo.InvariantCulture, $"{profile}iron {tool.Set.DegreesCelsius:0} °C{Contact(iron)}"),
            ToolSetting.HotAir air => string.Create(CultureInfo.InvariantCulture, $"{profile}air {tool.Set.DegreesCelsius:0} °C {(double)air.Flow.LitersPerMinute:0.#} L/min{(air.Distance is { } distance ? string.Create(CultureInfo.InvariantCulture, $" {distance.Millimeters:0.#} mm off") : ", distance not recorded")}"),
            ToolSetting.Preheater => string.Create(CultureInfo.InvariantCulture, $"{profile}preheater {tool.Set.DegreesCelsius:0} °C"),
            _ => string.Create(CultureInfo.InvariantCulture, $"bath {tool.Set.DegreesCelsius:0} °C"),
        };
    }

    private static string Contact(ToolSetting.Iron iron) => iron.Contact is { } contact ? " " + contact.Word() : ", contact not recorded";

    internal static string Of(CheckResult result) => result == CheckResult.Pass ? "passed" : "FAILED";

    /// <summary>What to probe.</summary>
    internal static string Of(ElectricalCheck check) => check switch
    {
        ElectricalCheck.Continuity continuity => $"continuity of {continuity.Pin}",
        ElectricalCheck.Isolation isolation => $"isolation of {isolation.First} from {isolation.Second}",
        ElectricalCheck.GroundIsolation ground => $"isolation of {ground.Pin} from ground",
        _ => throw new ArgumentOutOfRangeException(nameof(check)),
    };

    /// <summary>What the meter should show.</summary>
    internal static string Of(ExpectedReading expected) => expected switch
    {
        ExpectedReading.Conducts { Kind: ReferencePoint.Destination } conducts => $"conducts to {Visible(conducts.Place ?? string.Empty)}",
        ExpectedReading.Conducts { Kind: ReferencePoint.Ground } => "conducts to ground, away from the connector",
        ExpectedReading.Conducts => "conducts to the shell",
        _ => "open",
    };

    internal static string Of(JumperWire wire) => string.Create(
        CultureInfo.InvariantCulture,
        $"{wire.Gauge}, {wire.Length.Millimeters:0.#} mm, {(wire.Insulation is null ? "bare" : Visible(wire.Insulation))}{(wire.Pair is null ? string.Empty : $", pair {Visible(wire.Pair)}")}");

    /// <summary>What the job needs next.</summary>
    internal static string Of(NextStep step) => step switch
    {
        NextStep.SettleTouch settle => string.Create(CultureInfo.InvariantCulture, $"say how long touch {settle.Touch.Number} was ('touch log --ends {settle.Touch.Number}'), or that it gave no heat ('touch drop')"),
        NextStep.RegisterPins => "enter the pins of the connector ('job pins --pinout NAME' or '--from FILE')",
        NextStep.LookAtPads look => $"look at the pads and record what arrived ('job look'): {Pads(look.Pads, "all")}",
        NextStep.ChoosePlan => "choose a plan ('plan REQUEST.toml', then 'job accept')",
        NextStep.Work work => $"work by the plan: {Visible(work.Plan.Summary)}",
        NextStep.RepairPins repair => $"a check failed: go back to {Pads(repair.Pads, "its pins")}",
        NextStep.Probe probe => $"probe the {Of(probe.Line.Check)}: expect it {Of(probe.Line.Expected)} ('checks pass' or 'checks fail')",
        NextStep.Close => "hand over the record ('report') and close the job ('job close')",
        NextStep.None => "nothing: the job is closed",
        _ => throw new ArgumentOutOfRangeException(nameof(step)),
    };

    internal static string Pads(IReadOnlyList<PadId> pads, string none) =>
        pads.Count == 0 ? none : $"{(pads.Count == 1 ? "pad" : "pads")} {string.Join(", ", pads)}";

    internal static string Reading(MeterReading? reading) => reading switch
    {
        MeterReading.Shown shown => string.Create(CultureInfo.InvariantCulture, $" ({shown.Resistance.Ohms:0.###} ohm)"),
        MeterReading.OverRange => " (over range)",
        _ => string.Empty,
    };

    private static string Of(TimedMeasurement measurement) => measurement switch
    {
        TimedMeasurement.Flow flow => string.Create(CultureInfo.InvariantCulture, $"timed at pad {flow.Pad}: flowed after {flow.TimeToFlow.Seconds:0.#} s, {Tools(flow.Tools)}"),
        TimedMeasurement.FlowedWithin by => string.Create(CultureInfo.InvariantCulture, $"seen at pad {by.Pad}: flowed within {by.Within.Seconds:0.#} s, {Tools(by.Tools)}"),
        TimedMeasurement.NotFlowed not => string.Create(CultureInfo.InvariantCulture, $"seen at pad {not.Pad}: did not flow within {not.Within.Seconds:0.#} s, {Tools(not.Tools)}"),
        TimedMeasurement.Reading reading => string.Create(CultureInfo.InvariantCulture, $"read at pad {reading.Pad}: {reading.Shown.DegreesCelsius:0} °C at {Visible(reading.Place)} after {reading.After.Seconds:0.#} s"),
        TimedMeasurement.Trace trace => $"temperatures recorded at pad {trace.Pad}, {Visible(trace.Place)}",
        _ => throw new ArgumentOutOfRangeException(nameof(measurement)),
    };

    private static string Note(string? note) => note is null ? string.Empty : $" ({Visible(note)})";

    private static string Visible(string text) => VisibleText.Of(text);
}
