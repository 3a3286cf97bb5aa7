using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>The leg (pin) of a part in a hole.</summary>
public sealed record Leg
{
    /// <summary>Cross-section.</summary>
    public required LegShape Shape { get; init; }

    /// <summary>What the leg is made of.</summary>
    public required Metal Metal { get; init; }

    /// <summary>Length sticking out of the bottom face, zero or more.</summary>
    public required Length Protrusion
    {
        get;
        init => field = Dimension.NotNegative(value, "leg.protrusion");
    }

    /// <summary>Length between the top face and the body of the part, zero or more.</summary>
    public required Length StandOff
    {
        get;
        init => field = Dimension.NotNegative(value, "leg.stand_off");
    }
}
