using ReworkThermal.Core.HeatFlow.Materials;
using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Posing;

/// <summary>A material given by its figures, for problems posed by hand.</summary>
public abstract record PosedMaterial
{
    private PosedMaterial()
    {
    }

    internal abstract ThermalMaterial Compile();

    /// <summary>A solid with constant figures.</summary>
    /// <param name="RadialConductivity">Conductivity along r, above zero.</param>
    /// <param name="AxialConductivity">Conductivity along z, above zero.</param>
    /// <param name="Density">Density, above zero.</param>
    /// <param name="SpecificHeat">Specific heat, above zero.</param>
    public sealed record Solid(
        ThermalConductivity RadialConductivity,
        ThermalConductivity AxialConductivity,
        Density Density,
        SpecificEntropy SpecificHeat) : PosedMaterial
    {
        internal override ThermalMaterial Compile() => ThermalMaterial.Solid(
            RadialConductivity.WattsPerMeterKelvin,
            AxialConductivity.WattsPerMeterKelvin,
            Density.KilogramsPerCubicMeter * SpecificHeat.JoulesPerKilogramKelvin);
    }

    /// <summary>A material that melts.</summary>
    /// <param name="Curve">Heat content against temperature.</param>
    public sealed record Melting(EnthalpyCurve Curve) : PosedMaterial
    {
        internal override ThermalMaterial Compile() => ThermalMaterial.Of(Curve);
    }
}
