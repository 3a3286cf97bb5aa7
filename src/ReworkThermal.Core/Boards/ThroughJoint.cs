using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>A leg soldered in a plated barrel with a pad on either side.</summary>
public sealed record ThroughJoint : Joint
{
    /// <summary>Finished hole: the opening inside the plating.</summary>
    public required HoleShape Hole { get; init; }

    /// <summary>Thickness of the barrel's copper.</summary>
    public required Estimate<Length> BarrelWall
    {
        get;
        init => field = Dimension.Positive(value, "barrel_wall");
    }

    /// <summary>Diameter of the top pad (of equal area when it is not round).</summary>
    public required Length TopPadDiameter
    {
        get;
        init => field = Dimension.Positive(value, "top_pad");
    }

    /// <summary>Diameter of the bottom pad (of equal area when it is not round).</summary>
    public required Length BottomPadDiameter
    {
        get;
        init => field = Dimension.Positive(value, "bottom_pad");
    }

    /// <summary>Diameter of the land on inner layers that are joined by relief spokes.</summary>
    public required Length InnerLandDiameter
    {
        get;
        init => field = Dimension.Positive(value, "inner_land");
    }

    /// <summary>The leg; null for an empty hole.</summary>
    public required Leg? Leg { get; init; }

    /// <summary>Height of the solder fillet above the top pad at the leg, zero or more.</summary>
    public required Length TopFilletHeight
    {
        get;
        init => field = Dimension.NotNegative(value, "top_fillet");
    }

    /// <summary>Height of the solder fillet below the bottom pad at the leg, zero or more.</summary>
    public required Length BottomFilletHeight
    {
        get;
        init => field = Dimension.NotNegative(value, "bottom_fillet");
    }

    /// <summary>Inner diameter of the barrel; of the round hole of equal area for a slot.</summary>
    public Length BarrelInnerDiameter => Hole.EquivalentDiameter;

    /// <summary>Open cross-section of the barrel.</summary>
    public Area HoleArea => Hole.Area;

    /// <summary>Cross-section of the leg; zero for an empty hole.</summary>
    public Area LegCrossSection => Leg?.Shape.Area ?? Area.Zero;

    /// <inheritdoc/>
    public override void Check()
    {
        if (Leg is not null && !Leg.Shape.Fits(Hole))
        {
            string field = Leg.Shape is LegShape.Round ? "leg.diameter" : "leg.width";
            throw new ImpossibleGeometryException(
                field,
                $"a leg of {Dimension.Millimetres(Leg.Shape.Wide)} x {Dimension.Millimetres(Leg.Shape.Narrow)} does not go through a hole of {Dimension.Millimetres(Hole.Wide)} x {Dimension.Millimetres(Hole.Narrow)}; give a smaller leg or a larger hole");
        }

        Length barrelOuter = BarrelInnerDiameter + (2 * BarrelWall.Central);
        RequireWider(TopPadDiameter, barrelOuter, "top_pad");
        RequireWider(BottomPadDiameter, barrelOuter, "bottom_pad");
        RequireWider(InnerLandDiameter, barrelOuter, "inner_land");
        for (int i = 0; i < Connections.Count; i++)
        {
            if (Connections[i] is PlaneConnection.Relieved relieved)
            {
                Length land = i == 0 ? TopPadDiameter : i == Connections.Count - 1 ? BottomPadDiameter : InnerLandDiameter;
                relieved.RequireRoom(land.Meters * Math.PI, i + 1);
                continue;
            }

            if (Connections[i] is not PlaneConnection.Isolated isolated)
            {
                continue;
            }

            Length inside = i == 0 ? TopPadDiameter : i == Connections.Count - 1 ? BottomPadDiameter : barrelOuter;
            if (isolated.Antipad <= inside)
            {
                string what = i == 0 || i == Connections.Count - 1 ? "pad" : "barrel";
                throw new ImpossibleGeometryException(
                    "connection",
                    $"on layer {i + 1} the {what} of {Dimension.Millimetres(inside)} overlaps its antipad of {Dimension.Millimetres(isolated.Antipad)}; the antipad must be wider");
            }
        }
    }

    private static void RequireWider(Length pad, Length barrel, string field)
    {
        if (pad <= barrel)
        {
            throw new ImpossibleGeometryException(field, $"of {Dimension.Millimetres(pad)} must be wider than the barrel's outside, {Dimension.Millimetres(barrel)}");
        }
    }
}
