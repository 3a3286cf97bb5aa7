namespace ReworkThermal.Core.Damage;

/// <summary>What an exposure adds to the budget of a pad.</summary>
/// <param name="Before">The budget before it.</param>
/// <param name="After">The budget after it.</param>
public sealed record TouchCost(HeatBudget Before, HeatBudget After)
{
    /// <summary>Share of the budget that is added at the favourable end, the centre and the unfavourable end. The governing gauge
    /// may differ before and after.</summary>
    public Spread AddedShare => Spread.Added(After.Share, Before.Share);

    /// <summary>Share of a gauge's limit that is added.</summary>
    /// <param name="kind">Which gauge.</param>
    /// <returns>The added share, or null when the gauge does not apply to this pad.</returns>
    public Spread? AddedShareOf(GaugeKind kind) =>
        After.GaugeOrNull(kind) is { } after && Before.GaugeOrNull(kind) is { } before
            ? Spread.Added(after.Share, before.Share)
            : null;
}
