using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Plans;

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

/// <summary>Hot air on a joint.</summary>
/// <param name="Nozzle">The nozzle.</param>
/// <param name="Setting">Set temperature of the air.</param>
/// <param name="Flow">Flow of free air.</param>
/// <param name="Distance">Distance of nozzle and board.</param>
/// <param name="Lead">How long it blows before the iron that it helps touches; zero when it does it alone.</param>
public sealed record AirLine(string Nozzle, Temperature Setting, VolumeFlow Flow, Length Distance, Duration Lead);

/// <summary>The time to flow on many sampled benches.</summary>
/// <param name="P10">One bench in ten is quicker; null when that is later than <paramref name="Followed"/>.</param>
/// <param name="P50">Half of the benches are quicker; null likewise.</param>
/// <param name="P90">Nine benches in ten are quicker; null likewise.</param>
/// <param name="Followed">How long a bench was followed.</param>
/// <param name="Samples">Number of benches.</param>
/// <param name="FinishedInTime">Benches that had flowed and been worked before the stop time.</param>
/// <param name="PadTooHot">Benches on which the pad passed its temperature limit.</param>
/// <param name="Influences">Inputs by falling share of the spread.</param>
/// <param name="Explained">Share of the spread that the influences explain together [1].</param>
public sealed record TimeSpread(
    Duration? P10,
    Duration? P50,
    Duration? P90,
    Duration Followed,
    int Samples,
    int FinishedInTime,
    int PadTooHot,
    IReadOnlyList<InfluenceLine> Influences,
    double Explained);

/// <summary>A part near the joint and what the run did to it.</summary>
/// <param name="Name">The part.</param>
/// <param name="Peak">Highest temperature under it.</param>
/// <param name="Limit">Highest temperature it may have; null when none is known.</param>
/// <param name="Warnings">Limits it came past or near, one sentence each; empty when all is well.</param>
public sealed record NeighbourLine(string Name, Temperature Peak, Temperature? Limit, IReadOnlyList<string> Warnings);

/// <summary>How much of a spread one input is to blame for.</summary>
/// <param name="Input">The input.</param>
/// <param name="Share">Its share of the spread [1].</param>
/// <param name="HowToLearn">What can be done to know it better, one clause.</param>
/// <param name="Source">Where its range comes from: a key of the bibliography or a plain phrase.</param>
public sealed record InfluenceLine(string Input, double Share, string HowToLearn, string Source);
