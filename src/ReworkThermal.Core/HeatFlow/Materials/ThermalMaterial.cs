using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Materials;

/// <summary>What one cell is made of, in SI units.</summary>
internal sealed class ThermalMaterial
{
    private ThermalMaterial(double radial, double axial, double liquid, double heat, CaloricTable? table, bool melts)
    {
        RadialConductivity = radial;
        AxialConductivity = axial;
        LiquidConductivity = liquid;
        VolumetricHeat = heat;
        Table = table;
        Melts = melts;
    }

    /// <summary>Conductivity along r [W/mK]; of the solid for a solder.</summary>
    internal double RadialConductivity { get; }

    /// <summary>Conductivity along z [W/mK]; of the solid for a solder.</summary>
    internal double AxialConductivity { get; }

    /// <summary>Conductivity of the liquid [W/mK]; equal to the solid's for what does not melt.</summary>
    internal double LiquidConductivity { get; }

    /// <summary>Volumetric heat capacity [J/m3K]; the least one when there is a table.</summary>
    internal double VolumetricHeat { get; }

    /// <summary>Enthalpy table; null when the heat capacity is constant.</summary>
    internal CaloricTable? Table { get; }

    /// <summary>Whether the table holds a melting step.</summary>
    internal bool Melts { get; }

    internal static ThermalMaterial Solid(double radial, double axial, double volumetricHeat) =>
        new(radial, axial, axial, volumetricHeat, null, false);

    internal static ThermalMaterial Of(Metal metal) => Solid(
        metal.Conductivity.Central.WattsPerMeterKelvin,
        metal.Conductivity.Central.WattsPerMeterKelvin,
        metal.Density.Central.KilogramsPerCubicMeter * metal.SpecificHeat.Central.JoulesPerKilogramKelvin);

    internal static ThermalMaterial Of(EnthalpyCurve solder)
    {
        CaloricTable table = CaloricTable.Of(solder);
        double solid = solder.SolidConductivity.WattsPerMeterKelvin;
        return new(solid, solid, solder.LiquidConductivity.WattsPerMeterKelvin, table.LeastSlope, table, true);
    }

    /// <summary>
    /// Laminate whose specific heat rises by a share over 30 K around the glass transition. The step is an estimate, not data: no table
    /// above room temperature was found; it is spread so that it cannot ring.
    /// </summary>
    internal static ThermalMaterial Of(Laminate laminate)
    {
        const double reachK = 15;
        double heat = laminate.Density.Central.KilogramsPerCubicMeter * laminate.SpecificHeat.Central.JoulesPerKilogramKelvin;
        double rise = laminate.SpecificHeatRise.Central;
        double radial = laminate.InPlaneConductivity.Central.WattsPerMeterKelvin;
        double axial = laminate.ThroughConductivity.Central.WattsPerMeterKelvin;
        if (rise <= 0)
        {
            return Solid(radial, axial, heat);
        }

        double tg = laminate.GlassTransition.Central.Kelvins;
        double[] temperature = [tg - 200, tg - reachK, tg + reachK, tg + 200];
        double[] enthalpy = new double[4];
        enthalpy[0] = heat * (temperature[0] - ConductionNetwork.ReferenceK);
        enthalpy[1] = enthalpy[0] + (heat * (temperature[1] - temperature[0]));
        enthalpy[2] = enthalpy[1] + (heat * (1 + (rise / 2)) * (temperature[2] - temperature[1]));
        enthalpy[3] = enthalpy[2] + (heat * (1 + rise) * (temperature[3] - temperature[2]));
        return new(radial, axial, axial, heat, new CaloricTable(temperature, enthalpy, [0, 0, 0, 0]), false);
    }

    /// <summary>A layer that is partly copper and partly this material, side by side.</summary>
    internal ThermalMaterial SharedWith(ThermalMaterial copper, double copperShare, double radial)
    {
        double axial = (copperShare * copper.AxialConductivity) + ((1 - copperShare) * AxialConductivity);
        double heat = (copperShare * copper.VolumetricHeat) + ((1 - copperShare) * VolumetricHeat);
        return Solid(radial, axial, heat);
    }
}
