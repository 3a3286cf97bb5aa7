using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;

namespace ReworkThermal.Core.Damage;

/// <summary>Everything the data files say about damage.</summary>
/// <param name="Laminates">Classes of laminate, in file order; at least one.</param>
/// <param name="Parameters">Figures that do not depend on the class.</param>
/// <param name="Priors">Assumptions about earlier heat, mildest first; at least one.</param>
public sealed record DamageLimits(
    IReadOnlyList<LaminateLimits> Laminates,
    DamageParameters Parameters,
    IReadOnlyList<PriorHeat> Priors)
{
    /// <summary>Finds a class of laminate.</summary>
    /// <param name="name">Its name, by exact text.</param>
    /// <returns>The class, or null when there is none of that name.</returns>
    public LaminateLimits? LaminateOrNull(string name) => Laminates.FirstOrDefault(l => l.Name == name);

    /// <summary>Finds an assumption about earlier heat.</summary>
    /// <param name="name">Its name, by exact text.</param>
    /// <returns>The assumption, or null when there is none of that name.</returns>
    public PriorHeat? PriorOrNull(string name) => Priors.FirstOrDefault(p => p.Name == name);
}
