using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>The quick look at leftovers that passes are counted with, against the fine one.</summary>
public class PassCountTests(ITestOutputHelper output)
{
    /// <summary>Leftovers of every shipped dilution alloy in the refit of the demo, from almost none to much.</summary>
    [Fact]
    public void Coarse_freezing_leaves_the_same_liquid_within_its_doubt()
    {
        double limit = CleaningQuestion.MostLowMelting.DecimalFractions;
        double worst = 1;
        int near = 0;
        foreach (Alloy alloy in PlanDemo.Request.Bench.Dilutions)
        {
            foreach (double share in new[] { 0.002, 0.003, 0.004, 0.0055, 0.007, 0.01, 0.014, 0.02, 0.03 })
            {
                MassFractions final = PlanDemo.Request.Refill.Fractions.MixedWith(alloy.Fractions, share);
                double fine = Shelf.Engine.LiquidLeftAt(final, CleaningQuestion.LowMelting)!.Value;
                double coarse = Shelf.Engine.LiquidLeftAt(final, CleaningQuestion.LowMelting, CleaningSearch.CoarseStep)!.Value;
                if (fine > limit / 2 && fine < limit * 2)
                {
                    near++;
                    worst = Math.Max(worst, Math.Max(fine / coarse, coarse / fine));
                }
            }
        }

        output.WriteLine(FormattableString.Invariant($"{near} near the limit, off by a factor of {worst:0.00} at most"));
        Assert.InRange(near, 10, int.MaxValue);
        Assert.True(worst < CleaningSearch.Doubt);
    }
}
