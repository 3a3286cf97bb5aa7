using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Damage;

/// <summary>A published test in which a joint is melted a known number of times and must still pass.</summary>
/// <param name="Count">Number of melts.</param>
/// <param name="Test">What the test is.</param>
/// <param name="Provenance">Where the count comes from.</param>
/// <param name="Support">How far the literature carries it.</param>
public sealed record PublishedMeltCount(int Count, string Test, Provenance Provenance, SupportLevel Support);
