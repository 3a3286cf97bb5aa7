using ReworkThermal.Core.Damage.Mechanisms;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Barrel strain and cycles to failure beyond the rows that are verified; source in damage-barrel.csv.</summary>
public sealed class DamageBarrelTests
{
    /// <summary>A 10 µm wall lives at most 55 % shorter than a 25 µm wall (class C), and under 25 % for A and B: same computation.</summary>
    [Theory]
    [InlineData("A", 0.25)]
    [InlineData("B", 0.25)]
    [InlineData("C", 0.55)]
    public void A_thin_wall_shortens_the_life_by_a_bounded_share(string laminate, double most)
    {
        Temperature peak = DamageBench.Celsius(260);
        foreach (double modulus in new[] { 0.5, 3.4 })
        {
            double thick = Barrel(laminate, 25).CyclesToFailure(peak, Pressure.FromGigapascals(modulus));
            double thin = Barrel(laminate, 10).CyclesToFailure(peak, Pressure.FromGigapascals(modulus));
            Assert.True(thin >= (1 - most) * thick, $"{thin} against {thick}");
        }
    }

    private static BarrelFatigue Barrel(string laminate, double wallUm) =>
        new(DamageBench.Laminate(laminate), DamageBench.Parameters.Barrel, DamageBench.Hole(wallUm));
}
