using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>Reads what melts: by designation or by explicit melting points and heats.</summary>
internal static class SolderTable
{
    private static readonly Temperature _least = Temperature.FromDegreesCelsius(-100);
    private static readonly Temperature _most = Temperature.FromDegreesCelsius(3000);

    internal static SolderChoice Read(FieldReader table)
    {
        if (table.Has("designation"))
        {
            return new SolderChoice.Designation(
                table.Text("designation"),
                new DataFileProblem(table.File, table.LineOf("designation"), "solder.designation", string.Empty));
        }

        EnthalpyCurve curve = Curve(table);
        Temperature flow = table.Quantity("flow", UnitTable.Temperatures, _least, _most);
        return new SolderChoice.Given(curve, flow);
    }

    internal static EnthalpyCurve Curve(FieldReader table)
    {
        Temperature solidus = table.Quantity("solidus", UnitTable.Temperatures, _least, _most);
        Temperature liquidus = table.Quantity("liquidus", UnitTable.Temperatures, _least, _most);
        if (liquidus < solidus)
        {
            throw table.Wrong("liquidus", "must not lie below the solidus");
        }

        return EnthalpyCurve.Melting(
            solidus,
            liquidus,
            table.Quantity("latent_heat", UnitTable.SpecificEnergies, SpecificEnergy.Zero),
            table.Quantity("solid_heat", UnitTable.SpecificHeats, SpecificEntropy.FromJoulesPerKilogramKelvin(1)),
            table.Quantity("liquid_heat", UnitTable.SpecificHeats, SpecificEntropy.FromJoulesPerKilogramKelvin(1)),
            table.Quantity("density", UnitTable.Densities, Density.FromKilogramsPerCubicMeter(0.1)),
            table.Quantity("solid_conductivity", UnitTable.Conductivities, ThermalConductivity.FromWattsPerMeterKelvin(1e-3)),
            table.Quantity("liquid_conductivity", UnitTable.Conductivities, ThermalConductivity.FromWattsPerMeterKelvin(1e-3)));
    }
}
