using ReworkThermal.Core.Mixing;
using ReworkThermal.Data;
using ReworkThermal.Data.Alloys;
using UnitsNet;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>Gold by plating: area by thickness by 19.3 g/cm³ (CRC Handbook, from memory).</summary>
public sealed class GoldPlatingTests
{
    private static readonly SolderProperties _properties = AlloyShelf.Load(DataRoot.BesideProgram).Properties;

    // 30 mm² x 1 um x 19.3 g/cm³ = 0.579 mg; in 9.6 mg of solder 0.579 / 10.179, and a fifth of the gold after each cycle.
    [Theory]
    [InlineData(0, 0.05688)]
    [InlineData(1, 0.01192)]
    [InlineData(2, 0.002407)]
    public void Share_AfterCycles_IsThatOfTheGoldLeft(int cycles, double share)
    {
        GoldPlating gold = new(Area.FromSquareMillimeters(30), Length.FromMicrometers(1));
        Assert.Equal(0.579, gold.MassOf(_properties).Milligrams, 1e-6);
        Assert.Equal(share, gold.ShareAfter(Mass.FromMilligrams(9.6), cycles, Ratio.FromPercent(80), _properties).DecimalFractions, 1e-5);
    }
}
