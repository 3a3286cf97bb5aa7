using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Mixed joints, beyond the ends of freezing that are verified row by row.</summary>
public sealed class PhasesMixedJointTests
{
    /// <summary>K.-W. Moon et al., J. Electron. Mater. 30 (2001) 45: a bismuth-tin joint with lead from a finish keeps liquid at 100 °C.</summary>
    [Fact]
    public void BismuthTin_WithLeadFromAFinish_KeepsLiquidAt100()
    {
        ScheilPath path = PhasesData.Freeze(MassFractions.Of((Element.Sn, 41), (Element.Pb, 2), (Element.Bi, 57)));
        Assert.True(path.LiquidMassFractionAt(Temperature.FromDegreesCelsius(100)) > 0);
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
}
