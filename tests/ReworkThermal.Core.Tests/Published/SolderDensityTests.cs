using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Data;
using ReworkThermal.Data.Alloys;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>The rule of added specific volumes against listed densities; the sources stand in the head of the table.</summary>
public class SolderDensityTests(ITestOutputHelper output)
{
    // The worst listed alloy deviates by 1.1 %, which is also the scatter between tables for one alloy.
    private const double Tolerance = 0.011;

    [Fact]
    public void Added_specific_volumes_meet_listed_densities()
    {
        AlloyShelf shelf = AlloyShelf.Load(DataRoot.BesideProgram);
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("solder-density.csv"))
        {
            double listed = double.Parse(row["density_kg_m3"], CultureInfo.InvariantCulture);
            DesignationReading.Accepted alloy = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(row["designation"]));
            double computed = shelf.Properties.SolidDensity(alloy.Fractions).KilogramsPerCubicMeter;
            double deviation = (computed / listed) - 1;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row["designation"],-20} listed {listed,6:0} computed {computed,6:0} deviation {deviation,7:P2}"));
            Assert.InRange(deviation, -Tolerance, Tolerance);
        }
    }
}
