using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Electrical figures of a straight copper conductor.</summary>
public static class CopperConductor
{
    /// <summary>Resistivity of standard annealed copper at 20 °C [Ω m]: 1/58 Ω mm²/m (IEC 60028, 1925; 100 % IACS).</summary>
    internal const double ResistivityOhmM = 1e-6 / 58;

    /// <summary>Its temperature coefficient at constant mass, referred to 20 °C [1/K] (IEC 60028, 1925).</summary>
    internal const double CoefficientPerK = 0.00393;

    /// <summary>Melting point of copper [°C] as the fusing formulas use it.</summary>
    internal const double MeltingC = 1083;

    /// <summary>Permeability of free space over 2 π [H/m] (SI before 2019, equal within 1e-9).</summary>
    private const double PermeabilityOver2Pi = 2e-7;

    /// <summary>Resistance for direct current: ρ20 (1 + α (T − 20 °C)) l / A.</summary>
    /// <param name="section">Cross-section, above zero.</param>
    /// <param name="length">Length, zero or more.</param>
    /// <param name="temperature">Temperature of the conductor, −50 to 1083 °C.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ElectricResistance Resistance(Area section, Length length, Temperature temperature)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(section.SquareMeters, nameof(section));
        ArgumentOutOfRangeException.ThrowIfNegative(length.Meters, nameof(length));
        double celsius = temperature.DegreesCelsius;
        if (celsius is < -50 or > MeltingC)
        {
            throw new ArgumentOutOfRangeException(nameof(temperature), celsius, "must lie between -50 and 1083 °C");
        }

        return ElectricResistance.FromOhms(ResistivityAt(celsius) * length.Meters / section.SquareMeters);
    }

    /// <summary>
    /// Inductance of a straight round wire far from its return path at low frequency: 2e-7 l (ln(2 l / r) − 3/4) (E.B. Rosa, Bulletin
    /// of the Bureau of Standards 4 (1908) 301). Valid for a length of at least five diameters.
    /// </summary>
    /// <param name="gauge">The conductor.</param>
    /// <param name="length">Length.</param>
    /// <returns>The inductance, or null when the wire is too short for the formula.</returns>
    public static ElectricInductance? Inductance(WireGauge gauge, Length length)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        double lengthM = length.Meters;
        double diameterM = gauge.Diameter.Meters;
        return lengthM >= 5 * diameterM
            ? ElectricInductance.FromHenries(PermeabilityOver2Pi * lengthM * (Math.Log(4 * lengthM / diameterM) - 0.75))
            : null;
    }

    /// <summary>Resistivity at a temperature [Ω m].</summary>
    internal static double ResistivityAt(double celsius) => ResistivityOhmM * (1 + (CoefficientPerK * (celsius - 20)));
}
