using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>
/// A circuit board. Start reading this room here: a board is a <see cref="StackUp"/> in a <see cref="Laminate"/>; a
/// <see cref="Joint"/> says how each copper layer meets its barrel; a <see cref="JointSite"/> puts both together with the
/// <see cref="Connector"/> behind the leg and the <see cref="Neighbour"/> parts, and refuses what does not fit.
/// </summary>
public sealed record Board
{
    /// <summary>Name for reports.</summary>
    public required string Name { get; init; }

    /// <summary>One side of the outline.</summary>
    public required Length Width
    {
        get;
        init => field = Dimension.Positive(value, "width");
    }

    /// <summary>The other side of the outline.</summary>
    public required Length Depth
    {
        get;
        init => field = Dimension.Positive(value, "depth");
    }

    /// <summary>Copper and dielectric layers.</summary>
    public required StackUp StackUp { get; init; }

    /// <summary>The dielectric.</summary>
    public required Laminate Laminate { get; init; }

    /// <summary>The copper of foil and plating.</summary>
    public required Metal Copper { get; init; }

    /// <summary>Radius of the round board of the same area, with the joint in its middle.</summary>
    public Length EquivalentRadius => Length.FromMeters(Math.Sqrt(Width.Meters * Depth.Meters / Math.PI));
}
