using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Solders;

/// <summary>Turns what the phase engine and the mixing rules know of a solder into what the heat model needs of it.</summary>
/// <param name="properties">Density and conductivity rules.</param>
public sealed class SolderHeat(SolderProperties properties)
{
    // The solid curve starts at room temperature and ends well above every tip setting.
    private static readonly Temperature _coldest = Temperature.FromDegreesCelsius(25);
    private static readonly Temperature _hottest = Temperature.FromDegreesCelsius(500);

    /// <summary>Enthalpy curve of a solder.</summary>
    /// <param name="melting">How it melts.</param>
    /// <param name="massFactor">
    /// Mass of solder on the joint over the mass that fills its geometry, above zero. Alloy that is added on top is spread over the
    /// joint's own volume: its heat counts, its place does not.
    /// </param>
    /// <returns>The curve.</returns>
    public EnthalpyCurve CurveOf(MeltingBehaviour melting, double massFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(melting);
        List<double> kelvin = [];
        List<double> enthalpy = [];
        List<double> liquid = [];
        foreach (MeltCurvePoint point in melting.Curve.Points)
        {
            double joule = point.Enthalpy.JoulesPerKilogram;
            if (enthalpy.Count > 0 && joule <= enthalpy[^1])
            {
                continue;
            }

            kelvin.Add(point.Temperature.Kelvins);
            enthalpy.Add(joule);

            // A solid can come out again on heating (a compound changes into another); the heat model wants a share that never falls, and the
            // difference is a fraction of a percent of solid particles.
            liquid.Add(Math.Max(point.LiquidMassFraction, liquid.Count > 0 ? liquid[^1] : 0));
        }

        return Curve(melting, massFactor, kelvin, enthalpy, liquid);
    }

    /// <summary>
    /// The same solder without its heat of melting: it warms like the liquid all the way. A joint never flows later with this curve than
    /// with the real one, so it bounds the time to flow from below for every solder that could be in the joint.
    /// </summary>
    /// <param name="melting">How it melts.</param>
    /// <param name="massFactor">As for <see cref="CurveOf"/>.</param>
    /// <returns>The curve.</returns>
    public EnthalpyCurve CurveWithoutMelting(MeltingBehaviour melting, double massFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(melting);
        double slope = (melting.Curve.EnthalpyAt(_hottest) - melting.Curve.EnthalpyAt(melting.Liquidus)).JoulesPerKilogram
            / (_hottest - melting.Liquidus).Kelvins;
        return Curve(
            melting,
            massFactor,
            [_coldest.Kelvins, _hottest.Kelvins],
            [0, slope * (_hottest - _coldest).Kelvins],
            [1, 1]);
    }

    private EnthalpyCurve Curve(MeltingBehaviour melting, double massFactor, List<double> kelvin, List<double> enthalpy, List<double> liquid) => new(
        [.. kelvin],
        [.. enthalpy],
        [.. liquid],
        properties.SolidDensity(melting.Composition) * massFactor,
        properties.SolidConductivity(melting.Composition),
        properties.MeltConductivity(melting.Composition));
}
