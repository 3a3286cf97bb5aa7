using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>Heat from below, as a boundary condition.</summary>
public sealed record BottomHeat
{
    /// <summary>Radius of the heated disc; beyond it the lower face sees the room.</summary>
    public required Length Radius { get; init; }

    /// <summary>What acts on the heated disc.</summary>
    public required IReadOnlyList<FaceCondition> Conditions { get; init; }

    /// <summary>Share of the room's convection that still acts on the heated disc, 0 to 1.</summary>
    public required double RoomConvectionShare { get; init; }

    /// <summary>Share of the heated disc's view that is still the room, 0 to 1.</summary>
    public required double RoomViewShare { get; init; }

    /// <summary>Whether the run begins with the board settled over this heat; otherwise it begins cold and the soak is part of the run.</summary>
    public required bool Settled { get; init; }

    /// <summary>What was assumed, one sentence each.</summary>
    public required IReadOnlyList<string> Assumptions { get; init; }
}
