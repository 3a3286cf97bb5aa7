using System.Globalization;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;
using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>Decides which event may follow in a job. Whatever passes here can be replayed for ever.</summary>
public static class JobRules
{
    private static readonly EventVerdict.Accepted _accepted = new();

    /// <summary>Judges an event.</summary>
    /// <param name="state">The job so far, or null when there is none yet.</param>
    /// <param name="next">The event.</param>
    /// <returns>Accepted, or refused with the reason.</returns>
    public static EventVerdict Judge(JobState? state, JobEvent next)
    {
        ArgumentNullException.ThrowIfNull(next);
        string? fault = state is null
            ? next is JobEvent.JobOpened opened ? Brief(opened.Brief) : "a job must be opened first"
            : AfterOpening(state, next);
        return fault is null ? _accepted : new EventVerdict.Refused(fault);
    }

    private static string? AfterOpening(JobState state, JobEvent next)
    {
        if (state.Status == JobStatus.Closed && next is not JobEvent.JobReopened)
        {
            return "the job is closed; reopen it first";
        }

        return next switch
        {
            JobEvent.JobOpened => "the job is open already",
            JobEvent.BriefRevised revised => Brief(revised.Brief),
            JobEvent.PinsRegistered registered => Pins(state, registered.Pins),
            JobEvent.PadRegistered registered => NewPad(state, registered),
            JobEvent.PadStateSeen seen => Pad(state, seen.Pad) ?? EventText.Optional("the note", seen.Note),
            JobEvent.PriorHeatStated stated => Each(stated.Pads, p => Pad(state, p)) ?? EventText.Optional("the note", stated.Note),
            JobEvent.PlanAccepted accepted => Plan(accepted.Plan),
            JobEvent.CautionsShown => null,
            JobEvent.TouchStarted started => Tools(started.Start.Tools) ?? SomePads(state, started.Start.Pads),
            JobEvent.ExposureLogged logged => ExposureRules.Fault(state, logged),
            JobEvent.TouchDropped dropped => OpenTouch(state, dropped.Start) ?? EventText.Required("the reason", dropped.Reason),
            JobEvent.MeasurementTaken taken => Measurement(state, taken.Measurement),
            JobEvent.CheckDone done => Check(state, done),
            JobEvent.WireRun run => Wire(state, run),
            JobEvent.NoteTaken note => EventText.Required("the note", note.Text) ?? (note.Pad is null ? null : Pad(state, note.Pad)),
            JobEvent.EntryVoided voided => Void(state, voided),
            JobEvent.JobClosed closed => Close(state) ?? EventText.Optional("the note", closed.Note),
            JobEvent.JobReopened reopened => state.Status == JobStatus.Open ? "the job is open" : EventText.Required("the reason", reopened.Reason),
            _ => throw new InvalidOperationException($"no rule for {next.GetType().Name}"),
        };
    }

    internal static string? Pad(JobState state, PadId pad) =>
        state.Pads.ContainsKey(pad) ? null : $"there is no pad {pad} in this job; register it first";

    internal static string? SomePads(JobState state, IReadOnlyList<PadId> pads) =>
        pads.Count == 0 ? "name at least one pad"
        : pads.Distinct().Count() != pads.Count ? "a pad is named twice"
        : Each(pads, p => Pad(state, p));

    internal static string? Tools(IReadOnlyList<ToolSetting> tools) =>
        tools.Count == 0 ? "name at least one tool with its setting" : Each(tools, Tool);

    internal static string? OpenTouch(JobState state, int number) =>
        state.OpenTouches.Any(t => t.Number == number)
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"entry {number} is no touch that is still open");

    internal static string? Each<T>(IEnumerable<T> items, Func<T, string?> fault) => items.Select(fault).FirstOrDefault(f => f is not null);

    internal static string? Within(string what, Temperature value) =>
        value.DegreesCelsius is > -273.15 and <= 2000 ? null : $"{what} must be a temperature between absolute zero and 2000 °C";

    internal static string? Within(string what, Duration value, double mostSeconds) =>
        value.Seconds >= 0 && value.Seconds <= mostSeconds
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{what} must be between 0 and {mostSeconds} s; got {value.Seconds} s");

    private static string? Tool(ToolSetting tool) =>
        Within("the set temperature", tool.Set)
        ?? EventText.Optional("the tool profile", tool.Profile)
        ?? (tool is ToolSetting.HotAir { Flow.LitersPerMinute: double flow } && !(flow >= 0 && flow <= 10_000)
            ? "the air flow must be between 0 and 10000 L/min"
            : null);

    private static string? Brief(JobBrief brief) =>
        EventText.Required("the label", brief.Label, 200)
        ?? EventText.Optional("the board", brief.Board)
        ?? EventText.Optional("the joint", brief.Joint)
        ?? EventText.Optional("the connector", brief.Connector)
        ?? EventText.Optional("the base solder", brief.BaseSolder);

    private static string? Pins(JobState state, IReadOnlyList<Pin> pins) =>
        pins.Count == 0 ? "name at least one pin"
        : Each(pins, p => state.Pads.ContainsKey(p.Number) ? $"pad {p.Number} is in this job already" : null)
            ?? Each(pins, p => EventText.Required("the pin name", p.Name) ?? EventText.Optional("the pair", p.Pair))
            ?? PinRegister.Fault([.. state.Register.Pins, .. pins]);

    private static string? NewPad(JobState state, JobEvent.PadRegistered registered) =>
        state.Pads.ContainsKey(registered.Pad)
            ? $"pad {registered.Pad} is in this job already"
            : EventText.Required("the description", registered.Description);

    private static string? Plan(AcceptedPlan plan) =>
        Within("the dwell", plan.Dwell, 86_400)
        ?? Within("the stop time", plan.Stop, 86_400)
        ?? (plan.Stop < plan.Dwell ? "the stop time must not be shorter than the dwell" : null)
        ?? (plan.Passes is < 0 or > 100 ? "the number of passes must be between 0 and 100" : null)
        ?? Each(new[] { plan.IronSet, plan.PreheatSet, plan.AirSet }.OfType<Temperature>(), t => Within("a set temperature", t))
        ?? (plan.AddedMass is { Milligrams: double mg } && !(mg >= 0 && mg <= 1e6) ? "the added mass must be between 0 and 1 kg" : null)
        ?? (plan.AirFlow is { LitersPerMinute: double flow } && !(flow >= 0 && flow <= 10_000) ? "the air flow must be between 0 and 10000 L/min" : null)
        ?? EventText.Optional("the alloy", plan.Alloy)
        ?? EventText.Required("the summary", plan.Summary);

    private static string? Measurement(JobState state, TimedMeasurement measurement) =>
        Pad(state, measurement.Pad)
        ?? Tools(measurement.Tools)
        ?? (measurement.BoardAtStart is Temperature board ? Within("the board temperature", board) : null)
        ?? measurement switch
        {
            TimedMeasurement.Flow flow => Within("the time to flow", flow.TimeToFlow, 86_400),
            TimedMeasurement.Reading reading => EventText.Required("the place of the probe", reading.Place)
                ?? Within("the time of the reading", reading.After, 86_400)
                ?? Within("the reading", reading.Shown),
            TimedMeasurement.Trace trace => EventText.Required("the place of the probe", trace.Place)
                ?? (trace.Series.Origin == SeriesOrigin.Measured ? null : "a trace is measured, not simulated"),
            _ => throw new InvalidOperationException($"no rule for {measurement.GetType().Name}"),
        };

    private static string? Check(JobState state, JobEvent.CheckDone done) =>
        state.Checks.Lines.Any(l => l.Check == done.Check)
            ? done.Reading is { Ohms: double ohms } && !(ohms >= 0)
                ? "the reading must be a resistance of zero or more"
                : EventText.Optional("the note", done.Note)
            : "this check is not on the job's list; the list follows from the pin register";

    private static string? Wire(JobState state, JobEvent.WireRun run)
    {
        JumperWire wire = run.Wire;
        return Pad(state, wire.From)
            ?? Pad(state, wire.To)
            ?? (wire.From == wire.To ? "a wire needs two different ends" : null)
            ?? (wire.Length.Millimeters is > 0 and <= 1000 ? null : "the length of a wire must be above 0 and at most 1000 mm")
            ?? EventText.Optional("the insulation", wire.Insulation)
            ?? EventText.Optional("the pair", wire.Pair)
            ?? EventText.Optional("the note", run.Note);
    }

    private static string? Void(JobState state, JobEvent.EntryVoided voided)
    {
        string entry = string.Create(CultureInfo.InvariantCulture, $"entry {voided.Number}");
        if (voided.Number < 1 || voided.Number > state.LastNumber)
        {
            return $"there is no {entry} in this job";
        }

        if (state.Voided.ContainsKey(voided.Number))
        {
            return $"{entry} is voided already";
        }

        return state.Entries[voided.Number - 1].What switch
        {
            JobEvent.ExposureLogged or JobEvent.MeasurementTaken or JobEvent.CheckDone or JobEvent.WireRun or JobEvent.NoteTaken
                or JobEvent.PadStateSeen or JobEvent.PriorHeatStated or JobEvent.PlanAccepted => EventText.Required("the reason", voided.Reason),
            _ => $"{entry} cannot be voided: only touches, measurements, checks, wires, notes, looks, assumptions and plans can",
        };
    }

    private static string? Close(JobState state) =>
        state.OpenTouches is [Logged<TouchStart> open, ..]
            ? string.Create(CultureInfo.InvariantCulture, $"touch {open.Number} is still open; log it or drop it first")
            : null;
}
