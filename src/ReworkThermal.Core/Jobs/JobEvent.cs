using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.Core.Jobs;

/// <summary>
/// What can happen in a job; read this file first. A job is nothing but its events in order: they are only ever added, never changed
/// or taken away, and everything else (<see cref="JobState"/>) is computed from them. A mistake is answered by one more event,
/// <see cref="EntryVoided"/>. Which event may follow which is decided in <see cref="JobRules"/>.
/// </summary>
public abstract record JobEvent
{
    private JobEvent()
    {
    }

    /// <summary>A board came in. Always the first event, and only there.</summary>
    public sealed record JobOpened(JobBrief Brief) : JobEvent;

    /// <summary>What the job is about is known better now.</summary>
    public sealed record BriefRevised(JobBrief Brief) : JobEvent;

    /// <summary>Pins of a connector were entered; each is a pad of this job from here on.</summary>
    public sealed record PinsRegistered(IReadOnlyList<Pin> Pins) : JobEvent;

    /// <summary>A pad that is no connector pin was entered, such as the landing pad of a jumper wire.</summary>
    /// <param name="Pad">The pad.</param>
    /// <param name="Description">What it is.</param>
    /// <param name="Joint">Name of the joint profile it is judged as, or null for that of the job.</param>
    public sealed record PadRegistered(PadId Pad, string Description, string? Joint = null) : JobEvent;

    /// <summary>Somebody looked at a pad.</summary>
    public sealed record PadStateSeen(PadId Pad, PadState State, string? Note) : JobEvent;

    /// <summary>An assumption about heat before arrival, for some pads or, with an empty list, for all.</summary>
    public sealed record PriorHeatStated(IReadOnlyList<PadId> Pads, PriorCondition Heat, string? Note) : JobEvent;

    /// <summary>The technician agreed to a plan; a later one replaces it.</summary>
    public sealed record PlanAccepted(AcceptedPlan Plan) : JobEvent;

    /// <summary>The cautions were shown to the technician.</summary>
    public sealed record CautionsShown : JobEvent;

    /// <summary>A tool was put on. It stays open until an exposure ends it or it is dropped.</summary>
    public sealed record TouchStarted(TouchStart Start) : JobEvent;

    /// <summary>A touch happened.</summary>
    /// <param name="Exposure">The touch.</param>
    /// <param name="Ends">Number of the <see cref="TouchStarted"/> entry that it ends, or null when it was logged afterwards.</param>
    public sealed record ExposureLogged(Exposure Exposure, int? Ends) : JobEvent;

    /// <summary>A touch that was started never gave heat.</summary>
    public sealed record TouchDropped(int Start, string Reason) : JobEvent;

    /// <summary>Something was timed.</summary>
    public sealed record MeasurementTaken(TimedMeasurement Measurement) : JobEvent;

    /// <summary>A check was probed.</summary>
    public sealed record CheckDone(ElectricalCheck Check, CheckResult Result, MeterReading? Reading, string? Note) : JobEvent;

    /// <summary>A jumper wire was laid; its soldering is logged as exposures.</summary>
    public sealed record WireRun(JumperWire Wire, string? Note) : JobEvent;

    /// <summary>Free text, about one pad or about the job.</summary>
    public sealed record NoteTaken(string Text, PadId? Pad) : JobEvent;

    /// <summary>An earlier entry was a mistake: it stays readable and stops counting.</summary>
    public sealed record EntryVoided(int Number, string Reason) : JobEvent;

    /// <summary>The work is done.</summary>
    public sealed record JobClosed(string? Note) : JobEvent;

    /// <summary>The work goes on after all.</summary>
    public sealed record JobReopened(string Reason) : JobEvent;
}
