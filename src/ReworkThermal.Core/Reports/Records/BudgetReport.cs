using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.Core.Reports.Records;

/// <summary>Answer to "how much have the pads of this job had?"</summary>
/// <param name="Job">The job.</param>
/// <param name="Label">What the technician calls it.</param>
/// <param name="Pads">Every pad, judged.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record BudgetReport(
    JobId Job,
    string Label,
    IReadOnlyList<PadAccount> Pads,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);

/// <summary>One gauge of a pad before and after a job.</summary>
/// <param name="Name">What it gauges, for example "laminate".</param>
/// <param name="Before">Share of its limit that is used before [1].</param>
/// <param name="After">Share of its limit that is used after [1].</param>
/// <param name="Support">How well the figure is supported, in words.</param>
/// <param name="Reason">What the figure rests on, one sentence.</param>
public sealed record GaugeLine(string Name, Spread Before, Spread After, string Support, string Reason);

/// <summary>What a touch cost one pad.</summary>
/// <param name="Before">Its budget before.</param>
/// <param name="After">The pad after.</param>
public sealed record PadCost(HeatBudget Before, PadAccount After);
