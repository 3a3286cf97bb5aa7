using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>
/// Braid between a tip and a joint: resistances in series from the tip's face through the braid to the joint, and a body of its own to be
/// heated.
/// </summary>
public sealed record BraidLayer
{
    /// <summary>Conductance from the tip's face to the middle of the braid, per area: contact and half the thickness in series; above zero.</summary>
    public required HeatTransferCoefficient FromTip { get; init; }

    /// <summary>Width of the braid: the tip gives heat to it over its face, as far as the braid reaches.</summary>
    public required Length Width { get; init; }

    /// <summary>Contact with the joint, from dry to wetted; it waits for the solder under it to melt.</summary>
    public required ContactGrowth ToJoint { get; init; }

    /// <summary>Heat capacity of what is heated, with the solder that fills it [J/K], above zero.</summary>
    public required Entropy HeatCapacity { get; init; }

    /// <summary>Heat that leaves along the braid to the hand and to the air, zero or more [W/K].</summary>
    public required double LossWattsPerKelvin { get; init; }
}
