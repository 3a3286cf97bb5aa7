using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>The figure that plans are ranked by, and the count of passes it needs.</summary>
internal static class JobHeat
{
    // Residue of the dilution alloy that is surely clean: with 0.3 % of it left, no shipped alloy leaves 0.1 % of low-melting solder.
    private const double SurelyClean = 0.003;

    /// <summary>
    /// Adhesion lost by a job [1]: 1 - (1 - D) (1 - delta)^N with the laminate sum D and N melts, the adhesion gauge's own formula for a
    /// pad that was sound. It grows with every touch and with every degree, so it orders plans of few hot and of many cool touches.
    /// </summary>
    /// <param name="laminate">Laminate sum of the whole job.</param>
    /// <param name="melts">Melts of the whole job.</param>
    /// <param name="lossPerMelt">Adhesion lost per melt.</param>
    internal static double AdhesionLost(double laminate, int melts, double lossPerMelt) =>
        1 - (Math.Max(0, 1 - laminate) * Math.Pow(1 - lossPerMelt, melts));

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
