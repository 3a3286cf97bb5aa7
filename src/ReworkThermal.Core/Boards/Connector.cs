using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>
/// The body behind the leg: a lumped mass at one temperature that takes heat from the leg and gives it to the room.
/// </summary>
public sealed record Connector
{
    /// <summary>Name for reports.</summary>
    public required string Name { get; init; }

    /// <summary>Heat capacity of the metal shell with what is tied to it [J/K], above zero.</summary>
    public required Estimate<Entropy> HeatCapacity
    {
        get;
        init => field = Dimension.Above(value, Entropy.Zero, "heat_capacity");
    }

    /// <summary>How heat gets from the leg into the body.</summary>
    public required LegPath LegPath { get; init; }

    /// <summary>Conductance of that path over the computed or stated one, for a bench where it is better or worse; above zero.</summary>
    public double LegPathFactor { get; init; } = 1;

    /// <summary>Metal of the leg that goes on behind its stand-off, such as the other end of a header's pin; zero or more. It is heated with the leg.</summary>
    public Length MetalBehind
    {
        get;
        init => field = Dimension.NotNegative(value, "metal_behind");
    }

    /// <summary>Surface that loses heat to the room.</summary>
    public required Area Surface { get; init; }

    /// <summary>Combined convection and radiation coefficient of that surface.</summary>
    public required Estimate<HeatTransferCoefficient> Loss { get; init; }

    /// <summary>Highest temperature its plastic bears; null when there is none.</summary>
    public required Estimate<Temperature>? PlasticLimit { get; init; }
}
