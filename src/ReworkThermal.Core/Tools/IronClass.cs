using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>
/// An iron from what its owner knows: rated watts and the width of the tip. The rule: the tip is a copper body, twice as thick as its face
/// is wide (at most 3 mm thicker) and three times as long as thick; it holds rho c V, its sensor sits a quarter of the length from the
/// heater's end, so that three quarters of L/(k A) lie between sensor and face; the heater gives its rated power within a fifth.
/// </summary>
public static class IronClass
{
    // Copper near soldering temperatures (Copper Development Association, Calcutt 2001, table 5): 381 W/mK, 403 J/kgK; 8920 kg/m3.
    private const double CopperConductivity = 381;
    private const double CopperHeat = 403 * 8920;

    private const double ThickOverWide = 2;
    private const double MostThickerM = 3e-3;
    private const double LongOverThick = 3;
    private const double SensorShare = 0.75;

    // Shapes of tips differ that much from the rule: the range about the shipped classes. Judgement.
    private const double CapacityRange = 1.5;
    private const double ResistanceRange = 1.8;
    private const double PowerRange = 1.2;

    private static readonly Provenance _rule = new("judgement, no source", EvidenceMark.Computed);

    /// <summary>The iron of a power and a width.</summary>
    /// <param name="name">Name for reports.</param>
    /// <param name="rated">Rated power, above zero.</param>
    /// <param name="tipWidth">Width of the tip's working face, above zero.</param>
    /// <param name="displayOffset">How much hotter its display reads than the sensor is.</param>
    /// <param name="least">Lowest temperature it can be set to.</param>
    /// <param name="most">Highest temperature it can be set to.</param>
    /// <returns>The iron, with the ranges of the rule.</returns>
    public static Iron Of(string name, Power rated, Length tipWidth, TemperatureDelta displayOffset, Temperature least, Temperature most)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero((double)rated.Watts, nameof(rated));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tipWidth.Meters, nameof(tipWidth));
        double thick = Math.Min(ThickOverWide * tipWidth.Meters, tipWidth.Meters + MostThickerM);
        double length = LongOverThick * thick;
        double area = Math.PI * thick * thick / 4;
        return new Iron
        {
            Name = name,
            PowerLimit = Around(rated, PowerRange, (p, f) => Power.FromWatts((double)p.Watts * f)),
            TipHeatCapacity = Around(Entropy.FromJoulesPerKelvin(CopperHeat * area * length), CapacityRange, (c, f) => c * f),
            SensorToFaceKelvinPerWatt = Around(SensorShare * length / (CopperConductivity * area), ResistanceRange, (r, f) => r * f),
            FaceDiameter = tipWidth,
            DisplayOffset = displayOffset,
            LeastSetting = least,
            MostSetting = most,
        };
    }

    private static Estimate<T> Around<T>(T central, double range, Func<T, double, T> times)
        where T : struct => new(central, times(central, 1 / range), times(central, range), _rule);
}
