namespace ReworkThermal.Core.Damage;

/// <summary>How much of a budget a touch may leave used.</summary>
/// <param name="Share">Greatest share of the budget after the touch, above zero; 1 is the whole of it.</param>
/// <param name="AtUnfavourableEnd">Whether the unfavourable end of the share must keep the limit, instead of the central one.</param>
/// <param name="Only">The one gauge that must keep the limit; null for the whole budget. A gauge that does not apply to the pad sets no
/// limit.</param>
public sealed record DwellLimit(double Share, bool AtUnfavourableEnd, GaugeKind? Only = null)
{
    /// <summary>Whether a budget keeps the limit.</summary>
    /// <param name="budget">The budget.</param>
    /// <returns>True when it does.</returns>
    public bool Keeps(HeatBudget budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        Spread share = Only is { } kind ? budget.GaugeOrNull(kind)?.Share ?? default : budget.Share;
        return (AtUnfavourableEnd ? share.High : share.Central) <= Share;
    }
}
