namespace ReworkThermal.Core.Planning;

/// <summary>Something that was considered and left out.</summary>
/// <param name="What">What it is.</param>
/// <param name="Why">Why, one sentence with the figures.</param>
public sealed record RuledOut(string What, string Why);
