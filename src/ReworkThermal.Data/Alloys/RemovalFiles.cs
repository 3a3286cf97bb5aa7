using ReworkThermal.Core.Mixing;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Alloys;

/// <summary>Reads the ways of taking solder out of a joint, one TOML file each.</summary>
public static class RemovalFiles
{
    /// <summary>Reads every removal method of a folder, in file-name order.</summary>
    /// <param name="root">Where the data folders are.</param>
    /// <returns>The methods.</returns>
    /// <exception cref="DataFileException">A file is not in order.</exception>
    public static IReadOnlyList<RemovalMethod> Load(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        List<RemovalMethod> methods = [];
        foreach (string path in root.Files("profiles/removal"))
        {
            try
            {
                methods.Add(Read(path));
            }
            catch (DataFileException broken) when (root.LeavesOut(path, broken))
            {
                // Said at the end of the command.
            }
        }

        return methods;
    }

    private static RemovalMethod Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        RemovalMethod method = new(
            file.Text("name"),
            file.Estimate("efficiency", UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(100)),
            file.Text("note"))
        {
            Rate = file.Estimate("rate", UnitTable.MassFlows, MassFlow.FromMilligramsPerSecond(0.1), MassFlow.FromGramsPerSecond(100)),
            Strip = file.TableOrNull("strip") is { } strip ? Strip(strip) : null,
        };
        file.Finish();
        return method;
    }

    private static BraidStrip Strip(FieldReader table)
    {
        HeatTransferCoefficient least = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1);
        return new BraidStrip(
            table.Estimate("width", UnitTable.Lengths, Length.FromMillimeters(0.1), Length.FromMillimeters(20)),
            table.Estimate("thickness", UnitTable.Lengths, Length.FromMillimeters(0.05), Length.FromMillimeters(5)),
            table.Estimate("heated_length", UnitTable.Lengths, Length.FromMillimeters(0.5), Length.FromMillimeters(50)),
            table.Estimate("copper_share", 0.01, 1),
            table.Estimate("conductivity", UnitTable.Conductivities, ThermalConductivity.FromWattsPerMeterKelvin(0.1)),
            table.Estimate("tip_contact", UnitTable.HeatTransferCoefficients, least),
            table.Estimate("dry_contact", UnitTable.HeatTransferCoefficients, least),
            table.Estimate("wetted_contact", UnitTable.HeatTransferCoefficients, least),
            table.Estimate("wetting_time", UnitTable.Durations, Duration.FromMilliseconds(1), Duration.FromMinutes(1)));
    }
}
