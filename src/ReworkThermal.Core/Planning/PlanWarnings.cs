using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Searching;

namespace ReworkThermal.Core.Planning;

/// <summary>What a technician must know before following a plan, one sentence each.</summary>
internal static class PlanWarnings
{
    /// <summary>Hazards of mix, passes and refill, and general advice.</summary>
    internal static List<string> Of(Workload work, MixOption mix)
    {
        List<string> warnings = [];
        MassFractions refill = work.Request.Refill.Fractions;
        if (mix.Alloy is not null)
        {
            warnings.AddRange(MixHazards.Of(work.Solder.Fractions.MixedWith(refill, 0.5), mix.Alloy.Fractions));
            RemovalMethod removal = work.Request.Bench.Removal;
            warnings.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The passes are counted with {removal.Efficiency.Central.Percent:0} % taken out each time ({removal.Efficiency.Low.Percent:0} to {removal.Efficiency.High.Percent:0} % is usual): a poor pass needs another."));
        }

        if (refill[Element.Pb] > Alloy.MostLeadOfLeadFree && work.Solder.Fractions[Element.Pb] <= Alloy.MostLeadOfLeadFree)
        {
            warnings.Add("The refit brings lead to a lead-free joint: check what the law allows for this product, and mark the board.");
        }

        warnings.AddRange(work.Request.Advice);
        return warnings;
    }
}
