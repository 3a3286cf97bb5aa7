using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>A lead soldered on a pad of the top layer, with an optional track and optional vias under the pad.</summary>
public sealed record SurfaceJoint : Joint
{
    /// <summary>Length of the pad.</summary>
    public required Length PadLength
    {
        get;
        init => field = Dimension.Positive(value, "pad.length");
    }

    /// <summary>Width of the pad.</summary>
    public required Length PadWidth
    {
        get;
        init => field = Dimension.Positive(value, "pad.width");
    }

    /// <summary>Mean thickness of the solder on the pad.</summary>
    public required Length SolderThickness
    {
        get;
        init => field = Dimension.Positive(value, "solder_thickness");
    }

    /// <summary>Thickness of the lead's foot over the solder, zero when there is no lead.</summary>
    public required Length FootThickness
    {
        get;
        init => field = Dimension.NotNegative(value, "foot_thickness");
    }

    /// <summary>What the foot is made of; needed when it has a thickness.</summary>
    public required Metal? FootMetal { get; init; }

    /// <summary>Number of vias under the pad, zero or more.</summary>
    public required int Vias
    {
        get;
        init => field = value is >= 0 and <= 200 ? value : throw new ImpossibleGeometryException("vias.count", "must be a whole number from 0 to 200");
    }

    /// <summary>Finished diameter of each via; ignored when there is none.</summary>
    public required Length ViaDiameter { get; init; }

    /// <summary>Copper thickness in each via; ignored when there is none.</summary>
    public required Estimate<Length> ViaWall { get; init; }

    /// <summary>Area of the pad.</summary>
    public Area PadArea => PadLength * PadWidth;

    /// <summary>Diameter of the round pad of equal area.</summary>
    public Length PadEquivalentDiameter => Section.DiameterOfDisc(PadArea);

    /// <summary>Copper cross-section of all vias together.</summary>
    public Area ViaCopper
    {
        get
        {
            double inner = ViaDiameter.Meters / 2;
            double outer = inner + ViaWall.Central.Meters;
            return Area.FromSquareMeters(Vias * Math.PI * ((outer * outer) - (inner * inner)));
        }
    }

    /// <inheritdoc/>
    public override void Check()
    {
        if (FootThickness > Length.Zero && FootMetal is null)
        {
            throw new ImpossibleGeometryException("foot_metal", "must name a metal when the foot has a thickness");
        }

        if (Vias > 0)
        {
            Dimension.Positive(ViaDiameter, "vias.diameter");
            Dimension.Positive(ViaWall, "vias.wall");
            Length outer = ViaDiameter + (2 * ViaWall.Central);
            if (Vias * Math.PI * outer.Meters * outer.Meters / 4 >= PadArea.SquareMeters)
            {
                throw new ImpossibleGeometryException("vias.count", "the vias together are larger than the pad; give fewer or smaller vias");
            }
        }

        if (Connections.Count > 0 && Connections[0] is PlaneConnection.Relieved relieved)
        {
            relieved.RequireRoom(2 * (PadLength.Meters + PadWidth.Meters), 1);
        }

        if (Connections.Count > 0 && Connections[0] is PlaneConnection.Isolated isolated && isolated.Antipad <= PadEquivalentDiameter)
        {
            throw new ImpossibleGeometryException("connection", "on layer 1 the pad overlaps its antipad; the antipad must be wider than the pad");
        }
    }
}
