using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>Balances of mass and energy over equilibria and melt curves.</summary>
public sealed class PhasesBalanceTests
{
    [Fact]
    public void Phases_OfAnyEquilibrium_AddUpToTheAlloy()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            MassFractions mix = PhasesData.RandomMix(seed);
            EquilibriumState state = PhasesData.Equilibrium(mix, 60 + (seed * 3));
            foreach (Element element in ElementData.All)
            {
                double sum = state.Phases.Sum(p => p.MassFraction * p.Composition[element]);
                Assert.Equal(mix[element], sum, 1e-7);
            }
        }
    }

    /// <summary>
    /// The heat along the melt curve equals the difference of enthalpies of two equilibria found without the curve, within 0.1 %.
    /// </summary>
    [Fact]
    public void Heat_OfMeltCurve_IsTheEnthalpyDifferenceOfIndependentEquilibria()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            MassFractions mix = PhasesData.RandomMix(seed);
            MeltingBehaviour melting = PhasesData.Melt(mix);
            double low = melting.Solidus.DegreesCelsius - 0.02;
            double high = melting.Liquidus.DegreesCelsius + 40;
            double heat = 0;
            IReadOnlyList<MeltCurvePoint> points = melting.Curve.Points;
            for (int i = 1; i < points.Count; i++)
            {
                Temperature from = Max(points[i - 1].Temperature, Temperature.FromDegreesCelsius(low));
                Temperature to = Min(points[i].Temperature, Temperature.FromDegreesCelsius(high));
                if (points[i - 1].Temperature.Kelvins == points[i].Temperature.Kelvins && points[i].Temperature.DegreesCelsius > low)
                {
                    heat += (points[i].Enthalpy - points[i - 1].Enthalpy).JoulesPerKilogram;
                }
                else if (to > from)
                {
                    double slope = (points[i].Enthalpy - points[i - 1].Enthalpy).JoulesPerKilogram / (points[i].Temperature - points[i - 1].Temperature).Kelvins;
                    heat += slope * (to - from).Kelvins;
                }
            }

            double difference = (PhasesData.Equilibrium(mix, high).Enthalpy - PhasesData.Equilibrium(mix, low).Enthalpy).JoulesPerKilogram;
            Assert.True(Math.Abs(heat - difference) < 1e-3 * difference, $"{mix}: heat {heat}, enthalpy difference {difference}");
        }
    }

    [Fact]
    public void MeltCurve_AtItsPoints_IsTheEquilibriumFoundWithoutIt()
    {
        foreach (MassFractions mix in (MassFractions[])[PhasesData.TinSilverCopper, PhasesData.TinSilverCopper.MixedWith(PhasesData.BismuthLeadTin, 0.4)])
        {
            MeltingBehaviour melting = PhasesData.Melt(mix);
            foreach (MeltCurvePoint point in melting.Curve.Points.Where(p => p.LiquidMassFraction is > 0.001 and < 0.999))
            {
                EquilibriumState state = PhasesData.Equilibrium(mix, point.Temperature.DegreesCelsius + 1e-5);
                double next = melting.Curve.LiquidMassFractionAt(point.Temperature + TemperatureDelta.FromKelvins(1e-5));
                Assert.Equal(state.LiquidMassFraction, next, 1e-4);
            }
        }
    }

    private static Temperature Max(Temperature a, Temperature b) => a > b ? a : b;

    private static Temperature Min(Temperature a, Temperature b) => a < b ? a : b;
}
