using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Mixing;

/// <summary>Hazards that follow from what a mix is made of.</summary>
public static class MixHazards
{
    // From here on an element counts as present: the limit for lead in a homogeneous material.
    private const double Present = Alloy.MostLeadOfLeadFree;

    /// <summary>Hazards of melting an alloy into a joint.</summary>
    /// <param name="joint">What is in the joint.</param>
    /// <param name="added">What is added.</param>
    /// <returns>One sentence each; empty when there is nothing to say.</returns>
    public static IReadOnlyList<string> Of(MassFractions joint, MassFractions added)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(added);
        List<string> hazards = [];
        bool bringsLead = added[Element.Pb] > Present;
        bool hasLead = bringsLead || joint[Element.Pb] > Present;
        bool hasBismuth = added[Element.Bi] > Present || joint[Element.Bi] > Present;
        if (bringsLead)
        {
            hazards.Add("Brings lead to the joint: wash hands, no food at the bench, wipe wet, collect the waste; on a lead-free product check what the law allows.");
        }

        if (hasLead && hasBismuth)
        {
            hazards.Add("Bismuth and lead together: what is left behind melts near 96 °C; clean it out before the refit.");
        }

        if (added[Element.In] > Present)
        {
            hazards.Add("Indium is costly, and a joint with much of it stays soft; avoid dust when scraping.");
        }

        return hazards;
    }
}
