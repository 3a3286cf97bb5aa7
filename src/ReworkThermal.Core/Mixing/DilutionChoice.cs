using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>One alloy in one amount, and how the mix melts.</summary>
/// <param name="Alloy">The dilution alloy.</param>
/// <param name="Share">Share of the mix that is added alloy.</param>
/// <param name="Added">Mass of metal to add.</param>
/// <param name="Mix">The mix.</param>
/// <param name="Melting">How the mix melts.</param>
/// <param name="Freezing">How the mix freezes on real cooling.</param>
/// <param name="Hazards">Hazards of this alloy in this joint, one sentence each.</param>
public sealed record DilutionChoice(
    Alloy Alloy,
    Ratio Share,
    Mass Added,
    SolderCharge Mix,
    MeltingBehaviour Melting,
    ScheilPath Freezing,
    IReadOnlyList<string> Hazards);
