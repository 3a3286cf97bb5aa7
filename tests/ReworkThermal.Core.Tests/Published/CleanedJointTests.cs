using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Mixing;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>
/// Residue of a bismuth-tin dilution in a leaded refit. Source: K.-W. Moon, W.J. Boettinger, U.R. Kattner, C.A. Handwerker and others, J. Electron.
/// Mater. 30 (2001), abstract: tin-bismuth solder with lead ends freezing at 95.3 ± 0.5 °C, and freezing follows Scheil, not equilibrium.
/// The parameter set in use computes that eutectic at 98.0 °C, a stated bias of 2.7 K.
/// </summary>
public class CleanedJointTests(ITestOutputHelper output)
{
    private static readonly RemovalMethod _braid = new(
        "braid",
        new Estimate<Ratio>(Ratio.FromPercent(80), Ratio.FromPercent(60), Ratio.FromPercent(92), new Provenance("judgement, no source", EvidenceMark.Judgement)),
        string.Empty)
    {
        Rate = HeatFlowBench.Exactly(MassFlow.FromMilligramsPerSecond(10)),
    };

    [Fact]
    public void Each_flush_leaves_less_low_melting_solder_and_enough_of_them_make_it_clean()
    {
        SolderCharge joint = new(Mass.FromMilligrams(12), Shelf.Read("Sn96.5Ag3Cu0.5"));
        SolderCharge dilution = new(Mass.FromMilligrams(12), Shelf.Read("Bi58Sn42"));
        CleaningQuestion question = new(joint, dilution, Shelf.Read("Sn63Pb37"), Shelf.Read("Sn63Pb37"), _braid, 6);
        CleaningAnswer.Followed answer = Assert.IsType<CleaningAnswer.Followed>(new CleaningSearch(Shelf.Engine).Answer(question));
        foreach (FinalJoint final in answer.ByPasses)
        {
            output.WriteLine(FormattableString.Invariant($"{final.Passes} passes: {final.Joint.Fractions} solidus {final.Melting.Solidus.DegreesCelsius:0.0} Scheil end {final.Freezing.End.DegreesCelsius:0.0} low-melting {final.LowMeltingShare.Percent:0.000} %"));
        }

        Assert.Equal(answer.ByPasses.OrderByDescending(j => j.LowMeltingShare.Percent), answer.ByPasses);
        Assert.InRange(answer.ByPasses[0].Freezing.End.DegreesCelsius, 95.3 - 0.5, 95.3 + 3.5);
        Assert.NotNull(answer.Enough);
        Assert.True(answer.EnoughAtBest <= answer.Enough);
        Assert.True(answer.EnoughAtWorst is null || answer.EnoughAtWorst >= answer.Enough);
    }
}
