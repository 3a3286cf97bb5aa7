namespace ReworkThermal.Core.Reports;

/// <summary>One figure of a plan with how it came about.</summary>
/// <param name="Step">Which step of the reasoning it belongs to.</param>
/// <param name="Figure">The figure with its unit, in words.</param>
/// <param name="How">Formula or rule, one clause.</param>
/// <param name="RestsOn">Data file entries with their sources, or "assumption".</param>
public sealed record WhyLine(string Step, string Figure, string How, string RestsOn);
