using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Planning;
using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>One plan: settings, times and what they cost.</summary>
/// <param name="Kind">What this plan is best at, for example "no lead".</param>
/// <param name="Alloy">Name of the dilution alloy; null when nothing is added.</param>
/// <param name="Share">Share of the mix that is added alloy [1].</param>
/// <param name="AddedMass">Metal to add in the first pass; zero when nothing is added.</param>
/// <param name="WireLength">Wire that holds it; null when there is none.</param>
/// <param name="Flow">Flow temperature of the mix.</param>
/// <param name="Uncertainty">Plus or minus on it.</param>
/// <param name="First">The first pass: melt the mix and draw it out.</param>
/// <param name="Refit">Every later pass and the refit.</param>
/// <param name="Passes">How often to add, melt and draw out before the refit.</param>
/// <param name="Final">The joint after the refit.</param>
/// <param name="BudgetShare">Share of the pad's heat budget that the whole job uses [1].</param>
/// <param name="BudgetNow">Share of the pad's heat budget that is used before the job [1].</param>
/// <param name="BudgetAfter">Share of it that is used after the job [1].</param>
/// <param name="LaminateShare">Share of the laminate's time to delamination that the whole job uses [1].</param>
/// <param name="Gauges">The gauges of the pad before and after.</param>
/// <param name="BudgetReason">Which gauge governs after the job, one sentence.</param>
/// <param name="BindingLimit">The limit that stops a cooler or quicker plan of this kind, one clause.</param>
/// <param name="TimeToFlowSpread">Time to flow that one, five and nine runs in ten stay under; null when it was not sampled.</param>
/// <param name="Neighbours">Parts near the joint that come near or past a limit.</param>
/// <param name="Cautions">Hazards of this plan, one sentence each.</param>
public sealed record PlanLine(
    string Kind,
    string? Alloy,
    double Share,
    Mass AddedMass,
    Length? WireLength,
    Temperature Flow,
    TemperatureDelta Uncertainty,
    TouchLine First,
    TouchLine Refit,
    int Passes,
    FinalJointLine Final,
    Spread BudgetShare,
    Spread BudgetNow,
    Spread BudgetAfter,
    Spread LaminateShare,
    IReadOnlyList<GaugeLine> Gauges,
    string BudgetReason,
    string BindingLimit,
    TimeSpread? TimeToFlowSpread,
    IReadOnlyList<NeighbourStrain> Neighbours,
    IReadOnlyList<string> Cautions);
