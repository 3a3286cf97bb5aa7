using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>One plan: settings, times and what they cost.</summary>
/// <param name="Kind">What this plan is good at, for example "no lead".</param>
/// <param name="Alloy">Name of the dilution alloy; null when nothing is added.</param>
/// <param name="AddedMass">Metal to add; zero when nothing is added.</param>
/// <param name="Flow">Flow temperature of the mix.</param>
/// <param name="IronSetting">Set temperature of the iron; null when no iron is used.</param>
/// <param name="Preheat">Board temperature before the touch; null without a preheater.</param>
/// <param name="AirSetting">Set temperature of the hot air; null without hot air.</param>
/// <param name="AirFlow">Flow of the hot air; null without hot air.</param>
/// <param name="Dwell">How long the touch should last.</param>
/// <param name="Stop">When to stop at the latest, whether it has flowed or not.</param>
/// <param name="Passes">How often to add, melt and wick.</param>
/// <param name="BudgetShare">Share of the pad's heat budget that the whole plan uses [1].</param>
/// <param name="BudgetShareLow">The same at the low end of the activation-energy range.</param>
/// <param name="BudgetShareHigh">The same at the high end.</param>
/// <param name="BindingLimit">The limit that stops a quicker or cooler plan, one clause.</param>
/// <param name="TimeToFlow">Time to flow through the whole barrel with central values.</param>
/// <param name="TimeToFlowP10">One run in ten is quicker; null when it was not sampled.</param>
/// <param name="TimeToFlowP50">Half of the runs are quicker; null when it was not sampled.</param>
/// <param name="TimeToFlowP90">Nine runs in ten are quicker; null when it was not sampled.</param>
/// <param name="Reasons">Why this plan works, with the figures, one sentence each.</param>
public sealed record PlanLine(
    string Kind,
    string? Alloy,
    Mass AddedMass,
    Temperature Flow,
    Temperature? IronSetting,
    Temperature? Preheat,
    Temperature? AirSetting,
    VolumeFlow? AirFlow,
    Duration Dwell,
    Duration Stop,
    int Passes,
    double BudgetShare,
    double BudgetShareLow,
    double BudgetShareHigh,
    string BindingLimit,
    Duration TimeToFlow,
    Duration? TimeToFlowP10,
    Duration? TimeToFlowP50,
    Duration? TimeToFlowP90,
    IReadOnlyList<string> Reasons);
