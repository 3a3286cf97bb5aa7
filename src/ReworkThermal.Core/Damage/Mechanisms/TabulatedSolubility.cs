namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// A solubility curve sampled beforehand, for instance from phase equilibria, so that a history can be judged quickly. Between
/// samples the logarithm of the mass fraction is linear in 1/T, as for an ideal heat of solution; outside them the nearest two samples
/// are continued, and <see cref="Covers"/> says so.
/// </summary>
public sealed class TabulatedSolubility : ICopperSolubility
{
    private readonly double[] _celsius;
    private readonly double[] _inverseK;
    private readonly double[] _logFraction;

    /// <summary>Creates a curve from samples.</summary>
    /// <param name="celsius">Temperatures [°C], strictly rising, at least two.</param>
    /// <param name="massFractions">Copper in the saturated liquid [kg/kg] at those temperatures, above 0, at most 1, not falling.</param>
    /// <exception cref="ArgumentException">The samples are not of that form.</exception>
    public TabulatedSolubility(ReadOnlySpan<double> celsius, ReadOnlySpan<double> massFractions)
    {
        if (celsius.Length < 2 || celsius.Length != massFractions.Length)
        {
            throw new ArgumentException("a solubility curve needs at least two samples, with as many mass fractions as temperatures", nameof(celsius));
        }

        _celsius = celsius.ToArray();
        _inverseK = new double[celsius.Length];
        _logFraction = new double[celsius.Length];
        for (int i = 0; i < celsius.Length; i++)
        {
            bool rises = i == 0 || (celsius[i] > celsius[i - 1] && massFractions[i] >= massFractions[i - 1]);
            if (!(celsius[i] > -273.15) || !double.IsFinite(celsius[i]) || !(massFractions[i] > 0 && massFractions[i] <= 1) || !rises)
            {
                throw new ArgumentException("temperatures must rise, and mass fractions must lie above 0, not above 1, and not fall", nameof(massFractions));
            }

            _inverseK[i] = 1 / (celsius[i] + 273.15);
            _logFraction[i] = Math.Log(massFractions[i]);
        }
    }

    /// <summary>Whether a temperature lies within the samples.</summary>
    /// <param name="celsius">Temperature [°C].</param>
    /// <returns>True within the samples.</returns>
    public bool Covers(double celsius) => celsius >= _celsius[0] && celsius <= _celsius[^1];

    /// <inheritdoc/>
    public double SaturationMassFraction(double celsius)
    {
        int found = Array.BinarySearch(_celsius, celsius);
        int upper = Math.Clamp(found >= 0 ? found : ~found, 1, _celsius.Length - 1);
        double inverse = 1 / (celsius + 273.15);
        double share = (inverse - _inverseK[upper - 1]) / (_inverseK[upper] - _inverseK[upper - 1]);
        double log = _logFraction[upper - 1] + (share * (_logFraction[upper] - _logFraction[upper - 1]));
        return Math.Min(1, Math.Exp(log));
    }
}

/// <summary>How much copper a given solder holds when it is saturated. Monotone in temperature.</summary>
public interface ICopperSolubility
{
    /// <summary>Copper in the saturated liquid [kg/kg].</summary>
    /// <param name="celsius">Temperature [°C].</param>
    /// <returns>A mass fraction between 0 and 1.</returns>
    public double SaturationMassFraction(double celsius);
}
