using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Alloys;

/// <summary>Reads the physical properties of the elements (<c>elements.toml</c>).</summary>
internal static class ElementFile
{
    /// <summary>Reads the file.</summary>
    /// <param name="path">Path of the file: one table per modelled element.</param>
    /// <returns>The mixing rules over these elements.</returns>
    /// <exception cref="DataFileException">The file is missing, not in order, or lacks an element.</exception>
    internal static SolderProperties Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        Dictionary<Element, ElementProperties> elements = [];
        foreach (Element element in ElementData.All)
        {
            FieldReader table = file.Table(element.Symbol());
            Density lightest = Density.FromKilogramsPerCubicMeter(1000);
            Density heaviest = Density.FromKilogramsPerCubicMeter(25000);
            elements[element] = new ElementProperties(
                table.Estimate("density_solid", UnitTable.Densities, lightest, heaviest),
                table.Estimate("density_melt", UnitTable.Densities, lightest, heaviest),
                table.Number("melt_slope_kg_m3_k", 0, 5),
                table.Quantity("melting_point", UnitTable.Temperatures),
                table.Estimate("conductivity_solid", UnitTable.Conductivities),
                table.Estimate("conductivity_melt", UnitTable.Conductivities));
        }

        file.Finish();
        return new SolderProperties(elements);
    }
}
