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
            switch (PhasesData.Engine.EquilibriumAt(PhasesData.Random(seed), Temperature.FromDegreesCelsius(celsius)))
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
            switch (PhasesData.Engine.MeltingOf(PhasesData.Random(seed)))
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
        MassFractions alloy = MassFractions.FromMasses([0, 0, 0.7, 0, 0, 0, 99.1], 0.2);
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
