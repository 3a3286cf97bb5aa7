using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// Thickness of the intermetallic layer, for information only: in liquid solder x = x1 (t / t1)^n, in solid solder x² = K t with
/// K = K0 exp(-Q/RT) (Sn-3.5Ag on copper, Metals and Materials International 9(2), 2003, 70-200 °C). Neither is a cause of pad lift,
/// and no acceptance limit was found in print.
/// </summary>
public sealed class IntermetallicGrowth
{
    private readonly IntermetallicParameters _parameters;

    /// <summary>Prepares the growth laws.</summary>
    /// <param name="parameters">Their figures.</param>
    public IntermetallicGrowth(IntermetallicParameters parameters)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        _parameters = parameters;
    }

    /// <summary>Square of the layer that grows from nothing in solid solder [µm²].</summary>
    /// <param name="temperature">Steady temperature.</param>
    /// <param name="time">How long, not negative.</param>
    /// <returns>x² [µm²].</returns>
    public double SolidSquare(Temperature temperature, Duration time) => Rate(temperature.Kelvins) * time.Seconds;

    /// <summary>Thickness after growth in liquid, then in solid solder [µm].</summary>
    /// <param name="liquidTime">Total time in liquid solder, not negative.</param>
    /// <param name="solidSquareUm2">Sum of the squares grown in solid solder [µm²].</param>
    /// <returns>Thickness [µm]; the ends take the thinner and thicker of both ends of the exponent.</returns>
    public Spread ThicknessUm(Duration liquidTime, double solidSquareUm2)
    {
        double ratio = liquidTime.Seconds / _parameters.LiquidReferenceTime.Seconds;
        double slow = Math.Pow(ratio, _parameters.LiquidExponent.High);
        double central = Math.Pow(ratio, _parameters.LiquidExponent.Central);
        double fast = Math.Pow(ratio, _parameters.LiquidExponent.Low);
        return new Spread(
            Total(_parameters.LiquidThickness.Low, Math.Min(central, Math.Min(slow, fast))),
            Total(_parameters.LiquidThickness.Central, central),
            Total(_parameters.LiquidThickness.High, Math.Max(central, Math.Max(slow, fast))));

        double Total(Length atReference, double grown)
        {
            double liquid = atReference.Micrometers * grown;
            return Math.Sqrt((liquid * liquid) + solidSquareUm2);
        }
    }

    /// <summary>Square of the layer over a history, below a temperature only [µm²]; trapezoid over the samples.</summary>
    internal double SolidSquare(TemperatureHistory history, double belowC)
    {
        ReadOnlySpan<double> seconds = history.Seconds;
        ReadOnlySpan<double> celsius = history.Celsius;
        double total = 0;
        for (int i = 1; i < seconds.Length; i++)
        {
            double from = celsius[i - 1] < belowC ? Rate(celsius[i - 1] + 273.15) : 0;
            double to = celsius[i] < belowC ? Rate(celsius[i] + 273.15) : 0;
            total += 0.5 * (from + to) * (seconds[i] - seconds[i - 1]);
        }

        return total;
    }

    private double Rate(double kelvin) =>
        _parameters.SolidRate.Central * Math.Exp(-_parameters.SolidEnergy.Central.JoulesPerMole / (PhysicalConstants.MolarGas * kelvin));
}

/// <summary>Figures of intermetallic growth, for information only.</summary>
/// <param name="SolidRate">Parabolic rate constant of solid growth before the exponential [µm²/s].</param>
/// <param name="SolidEnergy">Activation energy of solid growth [J/mol].</param>
/// <param name="LiquidThickness">Thickness after the reference time in liquid solder [m].</param>
/// <param name="LiquidReferenceTime">That time [s].</param>
/// <param name="LiquidExponent">Exponent of time in liquid growth.</param>
public sealed record IntermetallicParameters(
    RatedEstimate<double> SolidRate,
    RatedEstimate<MolarEnergy> SolidEnergy,
    RatedEstimate<Length> LiquidThickness,
    Duration LiquidReferenceTime,
    RatedEstimate<double> LiquidExponent);
