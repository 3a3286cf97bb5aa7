using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.Core.Jobs;

/// <summary>What a job needs next, so that it can be taken up again after days.</summary>
public abstract record NextStep
{
    private NextStep()
    {
    }

    /// <summary>A touch was interrupted: say how long it was, or that it never gave heat.</summary>
    public sealed record SettleTouch(Logged<TouchStart> Touch) : NextStep;

    /// <summary>No pad is known yet: register the pins of the connector.</summary>
    public sealed record RegisterPins : NextStep;

    /// <summary>Pads nobody has looked at yet, before any heat.</summary>
    public sealed record LookAtPads(IReadOnlyList<PadId> Pads) : NextStep;

    /// <summary>A touch needs a plan first.</summary>
    public sealed record ChoosePlan : NextStep;

    /// <summary>Work by the plan.</summary>
    public sealed record Work(AcceptedPlan Plan) : NextStep;

    /// <summary>A check failed: go back to these pins.</summary>
    public sealed record RepairPins(IReadOnlyList<PadId> Pads) : NextStep;

    /// <summary>Probe this.</summary>
    public sealed record Probe(CheckLine Line) : NextStep;

    /// <summary>Every check passed: close the job and hand over the record.</summary>
    public sealed record Close : NextStep;

    /// <summary>The job is closed.</summary>
    public sealed record None : NextStep;

    /// <summary>Finds the next step of a job.</summary>
    /// <param name="state">The job.</param>
    /// <returns>The step.</returns>
    public static NextStep Of(JobState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state switch
        {
            { Status: JobStatus.Closed } => new None(),
            { OpenTouches: [Logged<TouchStart> open, ..] } => new SettleTouch(open),
            { Pads.Count: 0 } => new RegisterPins(),
            { Checks.Suspects: { Count: > 0 } suspects } => new RepairPins(suspects),
            { Exposures.Count: 0 } when Unseen(state) is { Count: > 0 } unseen => new LookAtPads(unseen),
            { Exposures.Count: 0, Plan: null } => new ChoosePlan(),
            { Checks.Proven: true } => new Close(),
            { Plan: { } plan } when !Refilled(state) => new Work(plan.What),
            { Checks.Upcoming: { } line } => new Probe(line),
            _ => new Close(),
        };
    }

    private static List<PadId> Unseen(JobState state) => [.. state.Pads.Values.Where(p => p.Pin is not null && p.State is null).Select(p => p.Pad)];

    private static bool Refilled(JobState state) => state.Exposures.Any(e => e.What.Purpose is TouchPurpose.Refill);
}
