using ReworkThermal.Core.Damage.Exposures;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Dwelling;

/// <summary>
/// Finds the longest safe dwell by bisection. The budget never falls as a dwell grows, as long as the supplier's histories for longer
/// dwells are nowhere cooler; then the answer is unique.
/// </summary>
public static class DwellSearch
{
    /// <summary>Precision of the answer.</summary>
    public static readonly Duration Precision = Duration.FromMilliseconds(10);

    /// <summary>Searches over touches.</summary>
    /// <param name="model">The pad's model.</param>
    /// <param name="before">What the pad has had.</param>
    /// <param name="touch">The whole exposure of the pad, cooling included, for a dwell between zero and <paramref name="most"/>.</param>
    /// <param name="most">Longest dwell to consider, above zero.</param>
    /// <param name="limit">How much may be used.</param>
    /// <returns>The longest dwell, rounded down to <see cref="Precision"/>, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The longest dwell or the limit is not above zero.</exception>
    public static SafeDwell Longest(DamageModel model, PadDamage before, Func<Duration, PadExposure> touch, Duration most, DwellLimit limit)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(touch);
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(most.Seconds, nameof(most));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit.Share, nameof(limit));
        HeatBudget now = model.Budget(before);
        if (!limit.Keeps(now))
        {
            return new SafeDwell.None(now, "the pad is over the limit already");
        }

        HeatBudget atMost = After(most);
        if (limit.Keeps(atMost))
        {
            return new SafeDwell.WholeRange(most, atMost);
        }

        HeatBudget shortest = After(Precision);
        if (most <= Precision || !limit.Keeps(shortest))
        {
            return new SafeDwell.None(now, "even the shortest touch breaks the limit: one more melt is too many, or the heat after it");
        }

        double low = Precision.Seconds;
        double high = most.Seconds;
        while (high - low > Precision.Seconds)
        {
            double middle = 0.5 * (low + high);
            (low, high) = limit.Keeps(After(Duration.FromSeconds(middle))) ? (middle, high) : (low, middle);
        }

        Duration longest = Duration.FromSeconds(low);
        return new SafeDwell.UpTo(longest, After(longest));

        HeatBudget After(Duration dwell) => model.Budget(model.After(before, touch(dwell)));
    }
}

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

/// <summary>The longest dwell that keeps a budget within a limit.</summary>
public abstract record SafeDwell
{
    private SafeDwell()
    {
    }

    /// <summary>A longest dwell exists.</summary>
    /// <param name="Longest">The dwell; a longer one breaks the limit.</param>
    /// <param name="After">The budget after it.</param>
    public sealed record UpTo(Duration Longest, HeatBudget After) : SafeDwell;

    /// <summary>The longest dwell that was asked about still keeps the limit.</summary>
    /// <param name="Asked">That dwell.</param>
    /// <param name="After">The budget after it.</param>
    public sealed record WholeRange(Duration Asked, HeatBudget After) : SafeDwell;

    /// <summary>No dwell keeps the limit: one melt already breaks it, or the pad is over it now.</summary>
    /// <param name="Now">The budget before the touch.</param>
    /// <param name="Reason">One sentence.</param>
    public sealed record None(HeatBudget Now, string Reason) : SafeDwell;
}

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
