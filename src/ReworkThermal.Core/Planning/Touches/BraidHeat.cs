using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>Turns a strip of braid into what the heat model needs of it.</summary>
public static class BraidHeat
{
    // Volumetric heats of copper and of tin-rich solder near 200 °C [J/m3K]: profiles/metals/copper.toml; 7400 kg/m3 and 240 J/kgK.
    private const double CopperHeat = 8920.0 * 390;
    private const double SolderHeat = 7400.0 * 240;

    // Film of still air with radiation on the strip beyond the tip [W/m2K].
    private const double AirFilm = 20;

    /// <summary>The strip with central values.</summary>
    /// <param name="strip">The strip.</param>
    /// <returns>Conductances per area, the heat capacity of the heated length, and the loss of the rest, which is a long fin: sqrt(h P k A).</returns>
    public static BraidLayer LayerOf(BraidStrip strip)
    {
        ArgumentNullException.ThrowIfNull(strip);
        double width = strip.Width.Central.Meters;
        double thickness = strip.Thickness.Central.Meters;
        double copper = strip.CopperShare.Central;
        double conductivity = strip.Conductivity.Central.WattsPerMeterKelvin;
        double half = thickness / 2 / conductivity;
        double volume = width * thickness * strip.HeatedLength.Central.Meters;
        return new BraidLayer
        {
            FromTip = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1 / ((1 / strip.TipContact.Central.WattsPerSquareMeterKelvin) + half)),
            Width = strip.Width.Central,
            ToJoint = new ContactGrowth(
                InSeries(strip.DryContact.Central.WattsPerSquareMeterKelvin, half),
                InSeries(strip.WettedContact.Central.WattsPerSquareMeterKelvin, half),
                strip.WettingTime.Central,
                WaitsForMelt: true),
            HeatCapacity = Entropy.FromJoulesPerKelvin(volume * ((copper * CopperHeat) + ((1 - copper) * SolderHeat))),
            LossWattsPerKelvin = Math.Sqrt(AirFilm * 2 * (width + thickness) * conductivity * width * thickness),
        };
    }

    private static HeatTransferCoefficient InSeries(double contact, double resistance) =>
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1 / ((1 / contact) + resistance));
}
