using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Damage.Pulling;

namespace ReworkThermal.Core.Damage;

/// <summary>Everything the damage model takes from data files besides the class of laminate.</summary>
/// <param name="Laminate">Delamination.</param>
/// <param name="Adhesion">Bond of copper to laminate.</param>
/// <param name="Copper">Dissolution of copper.</param>
/// <param name="Barrel">Barrel fatigue.</param>
/// <param name="Pull">Forces on a pad.</param>
/// <param name="Intermetallic">Intermetallic growth.</param>
/// <param name="MeltCounts">Published tests with a number of melts, fewest first; at least one.</param>
/// <param name="Gauges">Limits and bands.</param>
public sealed record DamageParameters(
    LaminateParameters Laminate,
    AdhesionParameters Adhesion,
    CopperParameters Copper,
    BarrelParameters Barrel,
    PullParameters Pull,
    IntermetallicParameters Intermetallic,
    IReadOnlyList<PublishedMeltCount> MeltCounts,
    GaugeLimits Gauges);
