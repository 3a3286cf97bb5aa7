using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>Solder wire with a flux core: turns millimetres of wire into milligrams of metal and back.</summary>
public sealed class SolderWire
{
    private readonly double _metalKgPerM;

    /// <summary>Describes a wire.</summary>
    /// <param name="diameter">Outer diameter, above zero.</param>
    /// <param name="metalDensity">Density of the solid alloy.</param>
    /// <param name="fluxShare">Share of the wire's mass that is flux, 0 to below 10 %; zero for solid wire.</param>
    /// <param name="fluxDensity">Density of the flux.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SolderWire(Length diameter, Density metalDensity, Ratio fluxShare, Density fluxDensity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(diameter.Meters, nameof(diameter));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(metalDensity.KilogramsPerCubicMeter, nameof(metalDensity));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fluxDensity.KilogramsPerCubicMeter, nameof(fluxDensity));
        double flux = fluxShare.DecimalFractions;
        if (!(flux is >= 0 and < 0.1))
        {
            throw new ArgumentOutOfRangeException(nameof(fluxShare), fluxShare, "the flux share of a wire lies between 0 and 10 %");
        }

        double area = Math.PI * diameter.Meters * diameter.Meters / 4;
        double volumePerKg = ((1 - flux) / metalDensity.KilogramsPerCubicMeter) + (flux / fluxDensity.KilogramsPerCubicMeter);
        _metalKgPerM = area / volumePerKg * (1 - flux);
    }

    /// <summary>Mass of metal in a length of wire, flux taken off.</summary>
    /// <param name="length">Length, zero or more.</param>
    /// <returns>Mass of metal.</returns>
    public Mass MetalIn(Length length)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(length.Meters, nameof(length));
        return Mass.FromKilograms(length.Meters * _metalKgPerM);
    }

    /// <summary>Length of wire that holds a mass of metal.</summary>
    /// <param name="metal">Mass of metal, zero or more.</param>
    /// <returns>Length of wire.</returns>
    public Length LengthFor(Mass metal)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(metal.Kilograms, nameof(metal));
        return Length.FromMeters(metal.Kilograms / _metalKgPerM);
    }
}
