using UnitsNet;

namespace ReworkThermal.Core.Damage;

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
