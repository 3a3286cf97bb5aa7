using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>What the clock is set to, from the job and its plan.</summary>
internal static class ClockSettings
{
    /// <summary>Takes the settings for a job that was just opened from what was done or planned in it.</summary>
    internal static ClockState SetUp(JobState job, ClockState before)
    {
        ClockState clock = new() { Turn = before.Turn + 1 };
        IReadOnlyList<ToolSetting> tools = job.OpenTouches.Count > 0 ? job.OpenTouches[^1].What.Tools
            : job.Exposures.Count > 0 ? job.Exposures[^1].What.Tools : [];
        PadId? pad = job.OpenTouches.Count > 0 ? job.OpenTouches[^1].What.Pads[0]
            : job.Exposures.Count > 0 ? job.Exposures[^1].What.Pads[0].Pad : null;
        clock = clock with { Pad = pad, Adds = job.Exposures is not [.., { What.Added: not null }] };
        return tools.Count > 0 ? tools.Aggregate(clock, ToolUpdate.With) : job.Plan is { } plan ? WithPlan(clock, plan.What) : clock;
    }

    /// <summary>Takes the settings of an accepted plan.</summary>
    internal static ClockState WithPlan(ClockState clock, AcceptedPlan plan) => clock with
    {
        IronCelsius = plan.IronSet is { } iron ? Math.Round(iron.DegreesCelsius, 3) : null,
        AirCelsius = plan.AirSet is { } air ? Math.Round(air.DegreesCelsius, 3) : null,
        AirLitresPerMinute = plan.AirFlow is { } flow ? Math.Round(flow.LitersPerMinute, 3) : null,
        PreheatCelsius = plan.PreheatSet is { } preheat ? Math.Round(preheat.DegreesCelsius, 3) : null,
    };

    /// <summary>Solder that a touch puts in: the alloy of the kept plan when mixing in, the refit alloy when refitting.</summary>
    internal static AddedSolder? AddedFor(BenchState state, TouchPurpose purpose) => purpose switch
    {
        _ when !state.Clock.Adds => null,
        TouchPurpose.Mix when state.Job?.Plan is { What: { Alloy: { } alloy, AddedMass: { } mass } } => new AddedSolder(alloy, mass),
        TouchPurpose.Refill when state.Plan.Form[PlanField.Refill] is { Length: > 0 } refill => new AddedSolder(refill, Mass: null),
        _ => null,
    };
}
