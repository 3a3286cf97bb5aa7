using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Plans;

/// <summary>Turns what a plan search found into an answer.</summary>
public static class PlanReporting
{
    /// <summary>The answer to a request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="outcome">What the search found.</param>
    /// <param name="sources">Citations of the data used.</param>
    /// <returns>The answer; without plans it carries the reason.</returns>
    public static PlanReport Of(PlanRequest request, PlanOutcome outcome, IReadOnlyList<string> sources)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(outcome);
        IReadOnlyList<Plan> plans = outcome is PlanOutcome.Planned planned ? planned.Plans : [];
        return new PlanReport(
            request.Title,
            $"{request.Site.Joint.Name} on {request.Site.Board.Name}",
            [.. plans.Select(Line)],
            outcome switch
            {
                PlanOutcome.NoPlan none => none.Reason,
                PlanOutcome.Failed failed => failed.Reason,
                _ => null,
            },
            [.. outcome.RuledOut.Select(r => new RuledOut(r.What, r.Why))],
            plans.Count > 0 ? plans[0].After.Assumptions : [],
            outcome.Assumptions,
            sources);
    }

    private static PlanLine Line(Plan plan) => new(
        KindOf(plan.Kind),
        plan.Alloy?.Name,
        plan.Share.DecimalFractions,
        plan.Added,
        plan.WireLength,
        plan.Melting.Flow,
        plan.Melting.Uncertainty,
        Touch(plan.First),
        Touch(plan.Refit),
        plan.Passes,
        FinalJointReporting.Line(plan.Final),
        plan.BudgetUsed,
        plan.Before.Share,
        plan.After.Share,
        plan.LaminateShare,
        [.. plan.After.Gauges.Select(g => new GaugeLine(g.Kind.Word(), plan.Before.GaugeOrNull(g.Kind)?.Share ?? default, g.Share, g.Support.Word(), g.Reason))],
        plan.After.Reason,
        plan.BindingLimit,
        plan.Sampling is { } spread ? SpreadOf(spread) : null,
        plan.Neighbours,
        plan.Warnings);

    private static TimeSpread SpreadOf(FlowSpread spread) => new(
        TimeOf(spread.P10),
        TimeOf(spread.P50),
        TimeOf(spread.P90),
        spread.Followed,
        spread.Samples,
        spread.FinishedInTime,
        spread.PadTooHot,
        [.. spread.Influences.Select(i => new InfluenceLine(i.Input.Name, i.Share, i.Input.HowToLearn, i.Input.Provenance.Source))],
        spread.Explained);

    private static Duration? TimeOf(SampledTime time) => time is SampledTime.At at ? at.Value : null;

    private static TouchLine Touch(TouchPlan touch) => new(
        touch.Setting.Iron?.Name,
        touch.Setting.Iron is null ? null : touch.Setting.Set,
        AirOf(touch.Setting),
        touch.Setting.Preheat?.Preheater.Name,
        touch.Board,
        touch.TimeToFlow,
        touch.Dwell,
        touch.Stop,
        StopOf(touch),
        touch.PadPeak);

    private static AirLine? AirOf(ToolSetting setting) => setting switch
    {
        { Air: { } air } => new AirLine(air.Nozzle.Name, setting.Set, air.Flow, air.Distance, Duration.Zero),
        { Assist: { } help } => new AirLine(help.Air.Nozzle.Name, help.Set, help.Air.Flow, help.Air.Distance, help.Lead),
        _ => null,
    };

    /// <summary>Name of a kind of plan.</summary>
    internal static string KindOf(PlanKind kind) => kind switch
    {
        PlanKind.SmallestBudget => "smallest budget",
        PlanKind.CoolestPad => "coolest pad",
        PlanKind.NoLead => "no lead",
        PlanKind.Surest => "surest",
        PlanKind.LeastEffort => "least effort",
        PlanKind.NoPreheat => "no preheater",
        PlanKind.NothingAdded => "nothing added",
        PlanKind.OtherAlloy => "another alloy",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    private static string StopOf(TouchPlan touch) => touch.StopReason switch
    {
        StopReason.LongestTouch => "longest touch",
        StopReason.PadTemperature => "pad limit",
        StopReason.HeatBudget => "heat budget",
        StopReason.Neighbour => $"limit of {touch.StopPart!.Name}",
        _ => throw new ArgumentOutOfRangeException(nameof(touch)),
    };
}
