namespace ReworkThermal.Core.Mixing;

/// <summary>An alloy that is not offered.</summary>
/// <param name="Name">Name of the alloy.</param>
/// <param name="Reason">Why, one sentence.</param>
public sealed record ExcludedAlloy(string Name, string Reason);
