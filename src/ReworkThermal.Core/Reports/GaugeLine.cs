using ReworkThermal.Core.Damage;

namespace ReworkThermal.Core.Reports;

/// <summary>One gauge of a pad before and after a job.</summary>
/// <param name="Name">What it gauges, for example "laminate".</param>
/// <param name="Before">Share of its limit that is used before [1].</param>
/// <param name="After">Share of its limit that is used after [1].</param>
/// <param name="Support">How well the figure is supported, in words.</param>
/// <param name="Reason">What the figure rests on, one sentence.</param>
public sealed record GaugeLine(string Name, Spread Before, Spread After, string Support, string Reason);
