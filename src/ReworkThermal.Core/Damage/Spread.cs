namespace ReworkThermal.Core.Damage;

/// <summary>
/// A computed figure at the favourable end, the centre and the unfavourable end of the parameter ranges. The ends come from putting
/// every parameter at its favourable or unfavourable end together: an outer envelope, not a confidence interval, and no
/// probability is attached to it.
/// </summary>
/// <param name="Low">Smallest value, not above <paramref name="Central"/>.</param>
/// <param name="Central">Value with the central parameters.</param>
/// <param name="High">Largest value, not below <paramref name="Central"/>.</param>
public readonly record struct Spread(double Low, double Central, double High)
{
    /// <summary>Difference of two spreads of the same growing quantity, end by end.</summary>
    /// <param name="later">The later spread.</param>
    /// <param name="earlier">The earlier spread.</param>
    /// <returns>What was added at each end.</returns>
    public static Spread Added(Spread later, Spread earlier)
    {
        double low = later.Low - earlier.Low;
        double central = later.Central - earlier.Central;
        double high = later.High - earlier.High;
        return new Spread(Math.Min(low, central), central, Math.Max(high, central));
    }

    /// <summary>This spread times a factor.</summary>
    /// <param name="factor">Factor, not negative.</param>
    /// <returns>The scaled spread.</returns>
    public Spread Times(double factor) => new(Low * factor, Central * factor, High * factor);
}
