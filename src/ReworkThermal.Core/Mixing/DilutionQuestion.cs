using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>Which alloy, and how much of it, makes a joint flow at a wanted temperature?</summary>
/// <param name="Joint">Solder in the joint, with anything it has picked up.</param>
/// <param name="Alloys">Alloys to compare.</param>
/// <param name="TargetFlow">Wanted flow temperature of the mix.</param>
/// <param name="LeadFreeOnly">Whether alloys with lead are left out.</param>
/// <param name="MostAddedShare">Largest share of the mix that may be added alloy, above 0 and below 100 %.</param>
public sealed record DilutionQuestion(
    SolderCharge Joint,
    IReadOnlyList<Alloy> Alloys,
    Temperature TargetFlow,
    bool LeadFreeOnly,
    Ratio MostAddedShare);
