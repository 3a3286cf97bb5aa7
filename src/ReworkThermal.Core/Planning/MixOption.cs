using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>One way of bringing the joint's solder to flow: as it is, or with some of an alloy melted into it.</summary>
/// <param name="Alloy">The dilution alloy; null when nothing is added.</param>
/// <param name="Share">Share of the mix that is added alloy.</param>
/// <param name="Added">Mass of metal to add.</param>
/// <param name="Mix">The mix on the joint.</param>
/// <param name="Melting">How the mix melts.</param>
internal sealed record MixOption(Alloy? Alloy, Ratio Share, Mass Added, SolderCharge Mix, MeltingBehaviour Melting)
{
    /// <summary>Flow temperature [°C].</summary>
    internal double FlowC => Melting.Flow.DegreesCelsius;

    /// <summary>Name for reports.</summary>
    internal string Name => Alloy?.Name ?? "nothing added";
}
