namespace ReworkThermal.Core.Planning;

/// <summary>How far a search is.</summary>
/// <param name="Share">0 to 1.</param>
/// <param name="Doing">What is being done, in a few words.</param>
public sealed record PlanProgress(double Share, string Doing);
