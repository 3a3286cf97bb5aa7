using System.Globalization;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;
using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>Decides which event may follow in a job. Whatever passes here can be replayed for ever.</summary>
public static class JobRules
{
    /// <summary>Longest time of one touch or measurement [s].</summary>
    internal const double SecondsPerDay = 86_400;

    private static readonly EventVerdict.Accepted _accepted = new();

    /// <summary>Judges an event.</summary>
    /// <param name="state">The job so far, or null when there is none yet.</param>
    /// <param name="next">The event.</param>
    /// <returns>Accepted, or refused with the reason.</returns>
    public static EventVerdict Judge(JobState? state, JobEvent next)
    {
        ArgumentNullException.ThrowIfNull(next);
        JobGate gate = new();
        foreach (JobEntry entry in state?.Entries ?? [])
        {
            gate.Admit(entry);
        }

        return Fault(gate, next) is { } fault ? new EventVerdict.Refused(fault) : _accepted;
    }

    /// <summary>Judges entries that shall follow a record, each against the record with the ones before it.</summary>
    /// <param name="record">The record so far; empty when there is none yet.</param>
    /// <param name="next">The entries.</param>
    /// <returns>Accepted, or refused with the reason against the first that does not fit.</returns>
    public static EventVerdict JudgeNext(IReadOnlyList<JobEntry> record, IReadOnlyList<JobEntry> next)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(next);
        JobGate gate = new();
        foreach (JobEntry entry in record)
        {
            gate.Admit(entry);
        }

        foreach (JobEntry entry in next)
        {
            if (Fault(gate, entry.What) is { } fault)
            {
                return new EventVerdict.Refused(fault);
            }

            gate.Admit(entry);
        }

        return _accepted;
    }

    /// <summary>Judges a whole record that comes from elsewhere.</summary>
    /// <param name="entries">The entries.</param>
    /// <returns>Accepted, or refused with the number of the first entry that does not fit and the reason.</returns>
    public static EventVerdict JudgeAll(IReadOnlyList<JobEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        JobGate gate = new();
        foreach (JobEntry entry in entries)
        {
            if (entry.Number != gate.LastNumber + 1)
            {
                return new EventVerdict.Refused(string.Create(
                    CultureInfo.InvariantCulture,
                    $"entry {entry.Number} stands where entry {gate.LastNumber + 1} is due; entries are numbered from 1 without gaps"));
            }

            if (Fault(gate, entry.What) is { } fault)
            {
                return new EventVerdict.Refused(string.Create(CultureInfo.InvariantCulture, $"entry {entry.Number}: {fault}"));
            }

            gate.Admit(entry);
        }

        return entries.Count > 0 ? _accepted : new EventVerdict.Refused("a job has at least the entry that opens it");
    }

    private static string? Fault(JobGate gate, JobEvent next) =>
        gate.LastNumber > 0 ? AfterOpening(gate, next)
        : next is JobEvent.JobOpened opened ? Brief(opened.Brief)
        : "a job must be opened first";

    private static string? AfterOpening(JobGate gate, JobEvent next)
    {
        if (gate.Status == JobStatus.Closed && next is not JobEvent.JobReopened)
        {
            return "the job is closed; reopen it first";
        }

        return next switch
        {
            JobEvent.JobOpened => "the job is open already",
            JobEvent.BriefRevised revised => Brief(revised.Brief),
            JobEvent.PinsRegistered registered => Pins(gate, registered.Pins),
            JobEvent.PadRegistered registered => NewPad(gate, registered),
            JobEvent.PadStateSeen seen => Pad(gate, seen.Pad) ?? EventText.Optional("the note", seen.Note),
            JobEvent.PriorHeatStated stated => Each(stated.Pads, p => Pad(gate, p)) ?? EventText.Optional("the note", stated.Note),
            JobEvent.PlanAccepted accepted => Plan(accepted.Plan),
            JobEvent.CautionsShown => null,
            JobEvent.TouchStarted started => Tools(started.Start.Tools) ?? SomePads(gate, started.Start.Pads) ?? Added(started.Start.Added),
            JobEvent.ExposureLogged logged => ExposureRules.Fault(gate, logged),
            JobEvent.TouchDropped dropped => OpenTouch(gate, dropped.Start) ?? EventText.Required("the reason", dropped.Reason),
            JobEvent.MeasurementTaken taken => Measurement(gate, taken.Measurement),
            JobEvent.CheckDone done => Check(gate, done),
            JobEvent.WireRun run => Wire(gate, run),
            JobEvent.NoteTaken note => EventText.Required("the note", note.Text) ?? (note.Pad is null ? null : Pad(gate, note.Pad)),
            JobEvent.EntryVoided voided => Void(gate, voided),
            JobEvent.JobClosed closed => Close(gate) ?? EventText.Optional("the note", closed.Note),
            JobEvent.JobReopened reopened => gate.Status == JobStatus.Open ? "the job is open" : EventText.Required("the reason", reopened.Reason),
            _ => throw new InvalidOperationException($"no rule for {next.GetType().Name}"),
        };
    }

    internal static string? Pad(JobGate gate, PadId pad) =>
        gate.HasPad(pad) ? null : $"there is no pad {pad} in this job; register it first";

    internal static string? SomePads(JobGate gate, IReadOnlyList<PadId> pads) =>
        pads.Count == 0 ? "name at least one pad"
        : pads.Distinct().Count() != pads.Count ? "a pad is named twice"
        : Each(pads, p => Pad(gate, p));

    internal static string? Tools(IReadOnlyList<ToolSetting> tools) =>
        tools.Count == 0 ? "name at least one tool with its setting" : Each(tools, Tool);

    internal static string? OpenTouch(JobGate gate, int number) =>
        gate.IsOpenTouch(number)
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"entry {number} is no touch that is still open");

    internal static string? Each<T>(IEnumerable<T> items, Func<T, string?> fault) => items.Select(fault).FirstOrDefault(f => f is not null);

    internal static string? Within(string what, Temperature value) =>
        value.DegreesCelsius is > -273.15 and <= 2000 ? null : $"{what} must be a temperature between absolute zero and 2000 °C";

    internal static string? Within(string what, Duration value, double mostSeconds) =>
        value.Seconds >= 0 && value.Seconds <= mostSeconds
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{what} must be between 0 and {mostSeconds} s; got {value.Seconds} s");

    private static string? AddedMass(Mass? mass) =>
        mass is { Milligrams: double mg } && !(mg >= 0 && mg <= 1e6) ? "the added mass must be between 0 and 1 kg" : null;

    internal static string? Added(AddedSolder? added) =>
        added is null ? null : EventText.Required("the added alloy", added.Designation) ?? AddedMass(added.Mass);

    private static string? AirFlow(VolumeFlow? flow) =>
        flow is { LitersPerMinute: double litres } && !(litres >= 0 && litres <= 10_000) ? "the air flow must be between 0 and 10000 L/min" : null;

    private static string? Tool(ToolSetting tool) =>
        Within("the set temperature", tool.Set)
        ?? EventText.Optional("the tool profile", tool.Profile)
        ?? AirFlow((tool as ToolSetting.HotAir)?.Flow)
        ?? (tool is ToolSetting.HotAir { Distance.Millimeters: not (>= 0 and <= 1000) } ? "the distance of nozzle and board must be between 0 and 1 m" : null);

    private static string? Brief(JobBrief brief) =>
        EventText.Required("the label", brief.Label, 200)
        ?? EventText.Optional("the board", brief.Board)
        ?? EventText.Optional("the joint", brief.Joint)
        ?? EventText.Optional("the connector", brief.Connector)
        ?? EventText.Optional("the base solder", brief.BaseSolder);

    private static string? Pins(JobGate gate, IReadOnlyList<Pin> pins) =>
        pins.Count == 0 ? "name at least one pin"
        : Each(pins, p => gate.HasPad(p.Number) ? $"pad {p.Number} is in this job already" : null)
            ?? Each(pins, p => EventText.Required("the pin name", p.Name) ?? EventText.Optional("the pair", p.Pair))
            ?? PinRegister.Fault([.. gate.Pins, .. pins]);

    private static string? NewPad(JobGate gate, JobEvent.PadRegistered registered) =>
        gate.HasPad(registered.Pad)
            ? $"pad {registered.Pad} is in this job already"
            : EventText.Required("the description", registered.Description) ?? EventText.Optional("the joint", registered.Joint);

    private static string? Plan(AcceptedPlan plan) =>
        Within("the dwell", plan.Dwell, SecondsPerDay)
        ?? Within("the stop time", plan.Stop, SecondsPerDay)
        ?? (plan.Stop < plan.Dwell ? "the stop time must not be shorter than the dwell" : null)
        ?? (plan.Passes is < 0 or > 100 ? "the number of passes must be between 0 and 100" : null)
        ?? Each(new[] { plan.IronSet, plan.PreheatSet, plan.AirSet }.OfType<Temperature>(), t => Within("a set temperature", t))
        ?? AddedMass(plan.AddedMass)
        ?? AirFlow(plan.AirFlow)
        ?? EventText.Optional("the alloy", plan.Alloy)
        ?? EventText.Required("the summary", plan.Summary);

    private static string? Measurement(JobGate gate, TimedMeasurement measurement) =>
        Pad(gate, measurement.Pad)
        ?? Tools(measurement.Tools)
        ?? (measurement.BoardAtStart is Temperature board ? Within("the board temperature", board) : null)
        ?? measurement switch
        {
            TimedMeasurement.Flow flow => Within("the time to flow", flow.TimeToFlow, SecondsPerDay),
            TimedMeasurement.FlowedWithin by => Within("the time within which it flowed", by.Within, SecondsPerDay),
            TimedMeasurement.NotFlowed not => Within("the time within which it did not flow", not.Within, SecondsPerDay),
            TimedMeasurement.Reading reading => EventText.Required("the place of the probe", reading.Place)
                ?? Within("the time of the reading", reading.After, SecondsPerDay)
                ?? Within("the reading", reading.Shown),
            TimedMeasurement.Trace trace => EventText.Required("the place of the probe", trace.Place)
                ?? (trace.Series.Origin == SeriesOrigin.Measured ? null : "a trace is measured, not simulated"),
            _ => throw new InvalidOperationException($"no rule for {measurement.GetType().Name}"),
        };

    private static string? Check(JobGate gate, JobEvent.CheckDone done) =>
        gate.HasCheck(done.Check)
            ? done.Reading is MeterReading.Shown { Resistance.Ohms: < 0 }
                ? "the reading must be a resistance of zero or more"
                : EventText.Optional("the note", done.Note)
            : "this check is not on the job's list; the list follows from the pin register";

    private static string? Wire(JobGate gate, JobEvent.WireRun run)
    {
        JumperWire wire = run.Wire;
        return Pad(gate, wire.From)
            ?? Pad(gate, wire.To)
            ?? (wire.From == wire.To ? "a wire needs two different ends" : null)
            ?? (wire.Length.Millimeters is > 0 and <= 1000 ? null : "the length of a wire must be above 0 and at most 1000 mm")
            ?? EventText.Optional("the insulation", wire.Insulation)
            ?? EventText.Optional("the pair", wire.Pair)
            ?? EventText.Optional("the note", run.Note);
    }

    private static string? Void(JobGate gate, JobEvent.EntryVoided voided)
    {
        string entry = string.Create(CultureInfo.InvariantCulture, $"entry {voided.Number}");
        if (voided.Number < 1 || voided.Number > gate.LastNumber)
        {
            return $"there is no {entry} in this job";
        }

        if (gate.IsVoided(voided.Number))
        {
            return $"{entry} is voided already";
        }

        return gate.EventAt(voided.Number) switch
        {
            JobEvent.ExposureLogged or JobEvent.MeasurementTaken or JobEvent.CheckDone or JobEvent.WireRun or JobEvent.NoteTaken
                or JobEvent.PadStateSeen or JobEvent.PriorHeatStated or JobEvent.PlanAccepted => EventText.Required("the reason", voided.Reason),
            _ => $"{entry} cannot be voided: only touches, measurements, checks, wires, notes, looks, assumptions and plans can",
        };
    }

    private static string? Close(JobGate gate) =>
        gate.FirstOpenTouch is int open
            ? string.Create(CultureInfo.InvariantCulture, $"touch {open} is still open; log it or drop it first")
            : null;
}
