namespace ReworkThermal.Core.Damage;

/// <summary>A gauge that does not apply or is incomplete, and why.</summary>
/// <param name="Kind">Which gauge.</param>
/// <param name="Reason">Why, one sentence.</param>
public sealed record GaugeOmission(GaugeKind Kind, string Reason);
