using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>
/// Currents at which a bare copper wire melts. They bound what a wire can ever carry; they are no ratings: insulation fails long before
/// copper melts.
/// </summary>
public static class FusingCurrent
{
    /// <summary>Preece's constant for copper [A/in^1.5]. Long bare wire in still air (W.H. Preece, 1884-1888, as in wire handbooks).</summary>
    private const double PreeceAPerIn15 = 10244;

    /// <summary>Longest time for which leaving out the loss of heat is fair [s].</summary>
    private const double LongestOnderdonkS = 10;

    /// <summary>Steady current that melts a long bare wire in still air: 10244 d^1.5 with the diameter in inches (Preece).</summary>
    /// <param name="gauge">The conductor.</param>
    /// <returns>The current.</returns>
    public static ElectricCurrent Preece(WireGauge gauge)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        return ElectricCurrent.FromAmperes(PreeceAPerIn15 * Math.Pow(gauge.Diameter.Inches, 1.5));
    }

    /// <summary>
    /// Current that melts a wire within a short time without any loss of heat: A sqrt(log10(1 + (1083 − Ta)/(234 + Ta)) / (33 t)) with A in
    /// circular mils, Ta in °C, t in s (Onderdonk).
    /// </summary>
    /// <param name="gauge">The conductor.</param>
    /// <param name="ambient">Temperature at the beginning, −50 to 500 °C.</param>
    /// <param name="time">Time, above 0 up to 10 s.</param>
    /// <returns>The current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ElectricCurrent Onderdonk(WireGauge gauge, Temperature ambient, Duration time)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        double celsius = ambient.DegreesCelsius;
        double seconds = time.Seconds;
        if (celsius is < -50 or > 500)
        {
            throw new ArgumentOutOfRangeException(nameof(ambient), celsius, "must lie between -50 and 500 °C");
        }

        if (seconds is <= 0 or > LongestOnderdonkS)
        {
            throw new ArgumentOutOfRangeException(nameof(time), seconds, "must be above 0 and at most 10 s");
        }

        double mils = gauge.Diameter.Mils;
        double rise = Math.Log10(1 + ((CopperConductor.MeltingC - celsius) / (234 + celsius)));
        return ElectricCurrent.FromAmperes(mils * mils * Math.Sqrt(rise / (33 * seconds)));
    }
}
