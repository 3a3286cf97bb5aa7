using ReworkThermal.Core.Mixing;

namespace ReworkThermal.Core.Planning;

/// <summary>How many passes a mix needs.</summary>
internal static class JobHeat
{
    // Residue of the dilution alloy that is surely clean: with 0.3 % of it left, no shipped alloy leaves 0.1 % of low-melting solder.
    private const double SurelyClean = 0.003;

    /// <summary>Passes until almost nothing of the added alloy is left, by mass balance alone; at most the limit.</summary>
    internal static int EstimatePasses(Workload work, MixOption mix)
    {
        if (mix.Alloy is null)
        {
            return 1;
        }

        double kept = 1 - work.Request.Bench.Removal.Efficiency.Central.DecimalFractions;
        double full = work.Solder.Amount.Kilograms;
        double added = mix.Added.Kilograms * kept;
        double residue = mix.Mix.Amount.Kilograms * kept;
        int passes = 1;
        while (added / full > SurelyClean && passes < work.Limits.MostPasses.Value)
        {
            double filled = Math.Max(full, residue);
            added *= kept;
            residue = filled * kept;
            passes++;
        }

        return passes;
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
