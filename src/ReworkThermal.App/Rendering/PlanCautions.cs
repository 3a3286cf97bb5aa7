using ReworkThermal.App.Wording;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Plans;

namespace ReworkThermal.App.Rendering;

/// <summary>Cautions of several plans, each once, with the plans that it belongs to.</summary>
internal static class PlanCautions
{
    /// <summary>Puts them together.</summary>
    /// <param name="plans">The plans in their order.</param>
    /// <returns>One sentence each; those of parts near the joint last.</returns>
    internal static IEnumerable<string> Of(IReadOnlyList<PlanLine> plans)
    {
        foreach (string caution in plans.SelectMany(p => p.Cautions).Distinct())
        {
            yield return PlanWords.CautionOf(caution, Numbers(plans, p => p.Cautions.Contains(caution)), plans.Count);
        }

        foreach (IGrouping<(string Part, NeighbourStrainKind Kind), NeighbourStrain> part in plans.SelectMany(p => p.Neighbours).GroupBy(n => (n.Part, n.Kind)))
        {
            int[] numbers = Numbers(plans, p => p.Neighbours.Any(n => (n.Part, n.Kind) == part.Key));
            yield return PlanWords.CautionOf(Strain([.. part]), numbers, plans.Count);
        }
    }

    /// <summary>What a plan does to one part near the joint, or several plans to the same part.</summary>
    internal static string Strain(IReadOnlyList<NeighbourStrain> strains) => PlanWords.Strain(
        strains[0],
        Numerals.Fixed(strains.Min(s => s.Worst), 0),
        Numerals.Fixed(strains.Max(s => s.Worst), 0),
        Numerals.Fixed(strains[0].Doubtful, 0),
        Numerals.Fixed(strains[0].Most, 0),
        strains.Any(s => s.IsOver));

    private static int[] Numbers(IReadOnlyList<PlanLine> plans, Func<PlanLine, bool> has) => [.. Enumerable.Range(1, plans.Count).Where(n => has(plans[n - 1]))];
}
