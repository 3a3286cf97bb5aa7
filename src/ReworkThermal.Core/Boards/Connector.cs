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

    /// <summary>Conductance between the leg at the body and the shell [W/K], above zero.</summary>
    public required Estimate<double> LegConductanceWattsPerKelvin
    {
        get;
        init => field = Dimension.Above(value, 0, "leg_conductance_w_per_k");
    }

    /// <summary>Surface that loses heat to the room.</summary>
    public required Area Surface { get; init; }

    /// <summary>Combined convection and radiation coefficient of that surface.</summary>
    public required Estimate<HeatTransferCoefficient> Loss { get; init; }

    /// <summary>Highest temperature its plastic bears; null when there is none.</summary>
    public required Estimate<Temperature>? PlasticLimit { get; init; }
}
