using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>How mixed joints end freezing, against <c>reference/melting-mixes.csv</c> (source on each row).</summary>
public sealed class PhasesMixedJointTests(ITestOutputHelper output)
{
    [Fact]
    public void EndOfFreezing_OfMixedJoints_AgreesWithPublishedEndPoints()
    {
        List<string> misses = [];
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("melting-mixes.csv"))
        {
            ScheilPath path = PhasesData.Freeze(ReferenceTable.Composition(row));
            if (row["quantity"] == "liquid at 100 °C")
            {
                double left = path.LiquidMassFractionAt(Temperature.FromDegreesCelsius(100));
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row["row"],-18} liquid at 100 °C {left:0.0000}"));
                if (!(left > 0))
                {
                    misses.Add(row["row"]);
                }

                continue;
            }

            double published = Number(row["published_c"]);
            double difference = path.End.DegreesCelsius - published;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row["row"],-18} {row["quantity"]} {path.End.DegreesCelsius:0.0} °C, published {published:0.0}, difference {difference:+0.0;-0.0}"));
            if (difference < -Number(row["below_k"]) || difference > Number(row["above_k"]))
            {
                misses.Add(row["row"]);
            }
        }

        Assert.Empty(misses);
    }

    /// <summary>
    /// "Estimation of liquidus temperature when SnAgCu BGA/CSP components are soldered with SnPb paste", California Polytechnic State
    /// University (abstract): the liquidus of the mix is below 217 °C and falls with the share of Sn-Pb.
    /// </summary>
    [Fact]
    public void Liquidus_OfTinSilverCopperWithTinLead_IsBelow217AndFallsWithLead()
    {
        double previous = 217;
        foreach (double share in (ReadOnlySpan<double>)[0.1, 0.2, 0.3, 0.4])
        {
            MassFractions mix = PhasesData.TinSilverCopper.MixedWith(PhasesData.TinLead, share);
            double flow = PhasesData.Melt(mix).Flow.DegreesCelsius;
            Assert.True(flow < previous, $"flow {flow} at share {share} is not below {previous}");
            previous = flow;
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
