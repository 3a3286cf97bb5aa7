using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Searching;

namespace ReworkThermal.Core.Planning.Pads;

/// <summary>How many passes a mix needs.</summary>
internal static class JobHeat
{
    /// <summary>Added alloy that is left after a number of passes, over the solder of the full joint [1]; by mass balance alone.</summary>
    internal static double ResidueShare(Workload work, MixOption mix, int passes)
    {
        double kept = 1 - work.Request.Bench.Removal.Efficiency.Central.DecimalFractions;
        double full = work.Solder.Amount.Kilograms;
        double added = mix.Added.Kilograms * kept;
        double residue = mix.Mix.Amount.Kilograms * kept;
        for (int pass = 2; pass <= passes; pass++)
        {
            added *= kept;
            residue = Math.Max(full, residue) * kept;
        }

        // A residue larger than the joint is not filled up again.
        return added / Math.Max(full, residue);
    }

    /// <summary>The refit of a mix as a question about passes.</summary>
    internal static CleaningQuestion Question(Workload work, MixOption mix) => new(
        work.Solder,
        new SolderCharge(mix.Added, mix.Alloy?.Fractions ?? work.Solder.Fractions),
        work.Request.Refill.Fractions,
        work.Request.Refill.Fractions,
        work.Request.Bench.Removal,
        work.Limits.MostPasses.Value);
}
