using System.Collections.Concurrent;
using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>The engine answers or says why not, whatever it is given.</summary>
public sealed class PhasesRobustnessTests(ITestOutputHelper output)
{
    private const int Compositions = 10_000;

    [Fact]
    public void Equilibrium_OfTenThousandRandomCompositions_IsCertifiedOrExplained()
    {
        ConcurrentBag<string> unexplained = [];
        ConcurrentBag<double> depths = [];
        Parallel.For(0, Compositions, seed =>
        {
            double celsius = 30 + (new Random(seed).NextDouble() * 450);
            switch (PhasesData.Unlimited.EquilibriumAt(PhasesData.Random(seed), Temperature.FromDegreesCelsius(celsius)))
            {
                case EquilibriumOutcome.Converged(EquilibriumState state):
                    depths.Add(state.DeepestPhase.JoulesPerMole);
                    break;
                case EquilibriumOutcome.NotConverged(string reason):
                    unexplained.Add(reason);
                    break;
                default:
                    Assert.Fail("the temperature is in range");
                    break;
            }
        });
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{depths.Count} of {Compositions} certified, deepest phase {depths.Max():0.0e0} J/mol; {unexplained.Count} not converged"));
        foreach (string reason in unexplained)
        {
            output.WriteLine(reason);
        }

        Assert.Equal(Compositions, depths.Count + unexplained.Count);
        Assert.All(depths, depth => Assert.True(depth <= 1e-3));
        Assert.True(unexplained.Count <= Compositions / 1000, $"{unexplained.Count} of {Compositions} did not converge");
    }

    [Fact]
    public void Melting_OfTenThousandRandomCompositions_IsFoundOrExplained()
    {
        ConcurrentBag<string> unexplained = [];
        int found = 0;
        Parallel.For(0, Compositions, seed =>
        {
            switch (PhasesData.Unlimited.MeltingOf(PhasesData.Random(seed)))
            {
                case MeltingOutcome.Found(MeltingBehaviour behaviour):
                    Interlocked.Increment(ref found);
                    Assert.True(behaviour.Liquidus >= behaviour.Solidus);
                    Assert.True(double.IsFinite(behaviour.LatentHeat.JoulesPerKilogram));
                    break;
                case MeltingOutcome.NotConverged(string reason):
                    unexplained.Add(reason);
                    break;
                default:
                    Assert.Fail("the compositions are inside the model");
                    break;
            }
        });
        output.WriteLine($"{found} of {Compositions} found; {unexplained.Count} not converged");
        foreach (string reason in unexplained)
        {
            output.WriteLine(reason);
        }

        Assert.Equal(Compositions, found + unexplained.Count);
        Assert.True(unexplained.Count <= Compositions / 1000, $"{unexplained.Count} of {Compositions} did not converge");
    }

    [Fact]
    public void Scheil_OfThousandRandomMixes_IsFollowedToItsEnd()
    {
        ConcurrentBag<string> unexplained = [];
        Parallel.For(0, 1000, seed =>
        {
            if (PhasesData.Engine.SolidifyWithoutDiffusion(PhasesData.RandomMix(seed)) is ScheilOutcome.NotConverged(string reason))
            {
                unexplained.Add(reason);
            }
        });
        Assert.Empty(unexplained);
    }

    // Compositions that could not be followed: what the solids take up had sunk to 1e-18 to 1e-30 in the liquid.
    [Theory]
    [InlineData("Bi3.004Ag93.007Sb0.408Pb1.396Sn0.068In2.117")]
    [InlineData("Bi91.899585Ag5.572392In1.670603Sb0.811249Sn0.046172")]
    [InlineData("Pb89.445315Ag7.540008Bi2.661986Sb0.196755Sn0.155936")]
    [InlineData("Cu94.077096Bi5.777828Ag0.104506In0.02968Pb0.0098Sn0.000625Sb0.000465")]
    public void Scheil_WhereAnElementIsUsedUp_IsFollowedToItsEnd(string designation)
    {
        MassFractions alloy = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(designation)).Fractions;
        ScheilPath path = Assert.IsType<ScheilOutcome.Found>(PhasesData.Unlimited.SolidifyWithoutDiffusion(alloy)).Path;
        Assert.True(path.LiquidMassFractions[^1] <= ScheilPath.NegligibleLiquid);
        Assert.Equal(1, path.Solids.Sum(s => s.MassFraction) + path.LiquidMassFractions[^1], 1e-6);
    }

    // Its end was reported at 78.0 °C, above the solidus of 63.9 °C, because 0.01 % was taken by amount of substance and not by mass.
    [Fact]
    public void ScheilEnd_IsWhereATenThousandthOfTheMassIsLeft()
    {
        MassFractions alloy = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read("Pb0.845In0.010Sn51.429Ag0.028Cu46.787Sb0.197Bi0.704")).Fractions;
        ScheilPath path = Assert.IsType<ScheilOutcome.Found>(PhasesData.Unlimited.SolidifyWithoutDiffusion(alloy)).Path;
        Assert.True(path.LiquidMassFractions[^1] <= ScheilPath.NegligibleLiquid);
        Assert.True(path.End <= Assert.IsType<MeltingOutcome.Found>(PhasesData.Unlimited.MeltingOf(alloy)).Behaviour.Solidus);
    }

    /// <summary>
    /// Random compositions on real cooling: every path is followed to its end, and an end above the solidus is explained: a trace is left,
    /// or the equilibrium liquid there is another one of a reaction close by. Where the melt curve loses liquid on heating, equilibria
    /// found without the path say the same (retrograde melting is real). 60 in every build; REWORK_THERMAL_SCAN_COMPOSITIONS=10000 for more.
    /// </summary>
    [Fact]
    public void Freezing_OfRandomCompositions_IsFollowedAndExplained()
    {
        int count = int.TryParse(Environment.GetEnvironmentVariable("REWORK_THERMAL_SCAN_COMPOSITIONS"), NumberStyles.None, CultureInfo.InvariantCulture, out int asked) ? asked : 60;
        ConcurrentBag<string> wrong = [];
        Parallel.For(0, count, seed =>
        {
            MassFractions alloy = PhasesData.Random(seed);
            if (PhasesData.Unlimited.SolidifyWithoutDiffusion(alloy) is not ScheilOutcome.Found { Path: { } path })
            {
                wrong.Add($"{seed}: {alloy} was not followed");
                return;
            }

            MeltingBehaviour melting = Assert.IsType<MeltingOutcome.Found>(PhasesData.Unlimited.MeltingOf(alloy)).Behaviour;
            bool traceLeft = path.LiquidMassFractions[^1] > 0;
            if (path.End.Kelvins > melting.Solidus.Kelvins + 6 && !traceLeft)
            {
                wrong.Add($"{seed}: {alloy} ends at {path.End}, solidus {melting.Solidus}");
            }

            IReadOnlyList<MeltCurvePoint> points = melting.Curve.Points;
            for (int i = 1; i < points.Count; i++)
            {
                bool apart = points[i].Temperature.Kelvins - points[i - 1].Temperature.Kelvins > 0.01;
                if (apart && points[i].LiquidMassFraction < points[i - 1].LiquidMassFraction - 1e-4 && !(Proven(alloy, points[i - 1], 1e-3) && Proven(alloy, points[i], -1e-3)))
                {
                    wrong.Add($"{seed}: {alloy} loses liquid at {points[i].Temperature}");
                }
            }
        });
        Assert.Empty(wrong);
    }

    private static bool Proven(MassFractions alloy, MeltCurvePoint point, double offsetKelvin) =>
        PhasesData.Unlimited.EquilibriumAt(alloy, Temperature.FromKelvins(point.Temperature.Kelvins + offsetKelvin)) is EquilibriumOutcome.Converged { State: { } state }
        && Math.Abs(state.LiquidMassFraction - point.LiquidMassFraction) < 2e-3;

    [Theory]
    [InlineData("Sn")]
    [InlineData("Pb")]
    [InlineData("In")]
    [InlineData("Sb")]
    public void Melting_OfPureElement_IsAtOneTemperature(string symbol)
    {
        Assert.True(ElementData.TryParseSymbol(symbol, out Element element));
        MeltingBehaviour melting = PhasesData.Melt(MassFractions.Of((element, 1)));
        Assert.Equal(melting.Solidus.Kelvins, melting.Liquidus.Kelvins, 1e-9);
        Assert.Equal(melting.Solidus.Kelvins, melting.Flow.Kelvins, 1e-9);
    }

    [Fact]
    public void Melting_WithTracesOfEverything_IsThatOfTheBase()
    {
        MassFractions pure = PhasesData.TinSilverCopper;
        MassFractions traced = pure.MixedWith(MassFractions.Of((Element.Bi, 1), (Element.Pb, 1), (Element.In, 1), (Element.Sb, 1)), 1e-6);
        Assert.Equal(PhasesData.Melt(pure).Liquidus.Kelvins, PhasesData.Melt(traced).Liquidus.Kelvins, 0.01);
        Assert.Equal(PhasesData.Melt(pure).Flow.Kelvins, PhasesData.Melt(traced).Flow.Kelvins, 0.01);
    }

    [Theory]
    [InlineData(-50)]
    [InlineData(5000)]
    public void Equilibrium_OutsideTheTemperatureRange_SaysSo(double celsius)
    {
        EquilibriumOutcome outcome = PhasesData.Engine.EquilibriumAt(PhasesData.TinLead, Temperature.FromDegreesCelsius(celsius));
        Assert.Contains("outside the range", Assert.IsType<EquilibriumOutcome.OutsideRange>(outcome).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Melting_WithTooMuchInertTrace_IsOutsideTheModel()
    {
        MassFractions alloy = MassFractions.FromMasses([0, 0, 0, 0.7, 0, 0, 0, 99.1, 0], 0.2);
        Assert.IsType<MeltingOutcome.OutsideModel>(PhasesData.Engine.MeltingOf(alloy));
    }

    [Fact]
    public void Melting_OfFittedOrMissingSystems_CarriesCaveatAndWiderUncertainty()
    {
        MeltingBehaviour assessed = PhasesData.Melt(PhasesData.TinSilverCopper);
        MeltingBehaviour leaning = PhasesData.Melt(PhasesData.TinSilverCopper.MixedWith(PhasesData.IndiumTin, 0.3));
        Assert.Empty(assessed.Caveats);
        Assert.Contains(leaning.Caveats, c => c.Contains("silver and indium", StringComparison.Ordinal));
        Assert.Contains(leaning.Caveats, c => c.Contains("In-Sn", StringComparison.Ordinal));
        Assert.True(leaning.Uncertainty > assessed.Uncertainty);
    }

    [Fact]
    public void CopperSolubility_OfSolderWithoutTin_SaysWhy()
    {
        SolubilityOutcome outcome = PhasesData.Engine.CopperSolubility(MassFractions.Of((Element.Pb, 1)), Temperature.FromDegreesCelsius(350));
        Assert.Contains("no tin", Assert.IsType<SolubilityOutcome.NoCompound>(outcome).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Engine_UsedFromManyThreads_GivesTheSameAnswers()
    {
        MassFractions[] mixes = [.. Enumerable.Range(0, 24).Select(PhasesData.RandomMix)];
        double[] serial = [.. mixes.Select(m => PhasesData.Melt(m).Flow.Kelvins)];
        double[] parallel = new double[mixes.Length];
        Parallel.For(0, mixes.Length, i => parallel[i] = PhasesData.Melt(mixes[i]).Flow.Kelvins);
        Assert.Equal(serial, parallel);
    }
}
