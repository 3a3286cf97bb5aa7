namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>How much of the spread an input is to blame for.</summary>
/// <param name="Input">The input.</param>
/// <param name="Share">Its share of the variance of the ranks of the times to flow, zero or more [1].</param>
public sealed record Influence(UncertainInput Input, double Share);
