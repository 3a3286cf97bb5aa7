using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Worked mass balances, exact arithmetic: w = (1 - f) w_joint + f w_added, in percent by mass.</summary>
public class MixMassBalanceTests
{
    [Theory]
    [InlineData("Sn96.5Ag3Cu0.5", "Sn63Pb37", 0.10, "Sn93.15Pb3.7Ag2.7Cu0.45")]
    [InlineData("Sn96.5Ag3Cu0.5", "Sn63Pb37", 0.50, "Sn79.75Pb18.5Ag1.5Cu0.25")]
    [InlineData("Sn96.5Ag3Cu0.5", "Bi58Sn42", 0.20, "Sn85.6Bi11.6Ag2.4Cu0.4")]
    [InlineData("Sn96.5Ag3Cu0.5", "Bi58Sn42", 0.50, "Sn69.25Bi29Ag1.5Cu0.25")]
    [InlineData("Sn96.5Ag3Cu0.5", "Bi52Pb32Sn16", 0.40, "Sn64.3Bi20.8Pb12.8Ag1.8Cu0.3")]
    [InlineData("Sn63Pb37", "Bi58Sn42", 0.05, "Sn61.95Pb35.15Bi2.9")]
    public void Mix_has_the_worked_composition(string joint, string added, double share, string expected)
    {
        MassFractions mix = Shelf.Read(joint).MixedWith(Shelf.Read(added), share);
        Assert.Equal(expected, mix.ToString());
    }
}
