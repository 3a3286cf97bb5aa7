using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>The room around the bench.</summary>
public sealed record Surroundings
{
    /// <summary>Temperature of air and walls.</summary>
    public required Temperature Room { get; init; }

    /// <summary>Convection coefficient at the upper face, without radiation.</summary>
    public required Estimate<HeatTransferCoefficient> TopConvection { get; init; }

    /// <summary>Convection coefficient at the lower face, without radiation.</summary>
    public required Estimate<HeatTransferCoefficient> BottomConvection { get; init; }
}
