using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Mechanisms;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Intermetallic thickness, for information only.</summary>
public sealed class DamageIntermetallicTests
{
    /// <summary>
    /// Sn-3.5Ag on copper: 9 µm after 60 days at 150 °C (Metals and Materials International 9(2), 2003, abstract). Preheats computed from
    /// the same law: 120 °C 5 min 0.03 µm, 150 °C 1 h 0.24 µm. Printed digits.
    /// </summary>
    [Theory]
    [InlineData(150, 60 * 86400, 9.0, 0.05)]
    [InlineData(120, 300, 0.03, 0.005)]
    [InlineData(150, 3600, 0.24, 0.005)]
    public void Solid_growth_agrees(double celsius, double seconds, double thicknessUm, double halfDigit) =>
        Assert.Equal(thicknessUm, Solid(celsius, seconds), halfDigit);

    /// <summary>
    /// A second, independent source: Chan, So and Lai, Materials Science and Engineering B55 (1998) 5-13, D0 = 1.61e-4 m²/s and 1.09 eV for
    /// Sn-Pb joints; x = sqrt(D t). They agree within 4 %; Boltzmann constant 8.617333e-5 eV/K (CODATA 2018).
    /// </summary>
    [Fact]
    public void Two_sources_agree_on_solid_growth()
    {
        double seconds = 60 * 86400;
        double other = 1e6 * Math.Sqrt(1.61e-4 * Math.Exp(-1.09 / (8.617333e-5 * 423.15)) * seconds);
        Assert.Equal(1, Solid(150, seconds) / other, 0.04);
    }

    /// <summary>A minute in liquid solder gives 2.5 µm, which lies in the 1-3 µm (tin-lead) to 5 µm (lead-free) of NPL Good Practice
    /// Guide 110; eight minutes give twice that, by the exponent of a third (from memory).</summary>
    [Fact]
    public void Liquid_growth_is_of_the_published_size()
    {
        IntermetallicGrowth growth = new(DamageBench.Parameters.Intermetallic);
        Spread minute = growth.ThicknessUm(Duration.FromMinutes(1), 0);
        Assert.InRange(minute.Central, 1, 5);
        Assert.Equal(2 * minute.Central, growth.ThicknessUm(Duration.FromMinutes(8), 0).Central, 1e-9);
    }

    private static double Solid(double celsius, double seconds)
    {
        IntermetallicGrowth growth = new(DamageBench.Parameters.Intermetallic);
        return growth.ThicknessUm(Duration.Zero, growth.SolidSquare(DamageBench.Celsius(celsius), Duration.FromSeconds(seconds))).Central;
    }
}
