using ReworkThermal.Core.Boards;

namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>
/// The joint reduced to radii and heights [m] that an axisymmetric mesh can follow: sections become discs of equal area, fillets rings
/// of equal volume.
/// </summary>
internal sealed record JointGeometry
{
    /// <summary>Radius of the leg (or of the vias' copper under a surface pad); zero without one.</summary>
    internal required double CoreRadius { get; init; }

    /// <summary>Inner radius of the barrel; equal to the core's for a surface joint.</summary>
    internal required double BarrelInner { get; init; }

    /// <summary>Outer radius of the barrel.</summary>
    internal required double BarrelOuter { get; init; }

    /// <summary>Radius of the top pad.</summary>
    internal required double TopPad { get; init; }

    /// <summary>Radius of the bottom pad; zero for a surface joint.</summary>
    internal required double BottomPad { get; init; }

    /// <summary>Radius of the lands on inner layers.</summary>
    internal required double InnerLand { get; init; }

    /// <summary>Thickness of the ring that holds the top fillet (or the solder of a surface pad); zero for none.</summary>
    internal required double TopSolder { get; init; }

    /// <summary>Thickness of the foot over a surface pad's solder; zero for none.</summary>
    internal required double TopFoot { get; init; }

    /// <summary>Thickness of the ring that holds the bottom fillet; zero for none.</summary>
    internal required double BottomSolder { get; init; }

    /// <summary>Whether the barrel holds solder (a through joint) or copper only (vias).</summary>
    internal required bool SolderInBarrel { get; init; }

    internal static JointGeometry Of(Joint joint) => joint switch
    {
        ThroughJoint through => Of(through),
        SurfaceJoint surface => Of(surface),
        _ => throw new ArgumentException("unknown kind of joint", nameof(joint)),
    };

    private static JointGeometry Of(ThroughJoint joint)
    {
        double leg = joint.Leg is null ? 0 : joint.Leg.Shape.EquivalentDiameter.Meters / 2;
        double inner = joint.BarrelInnerDiameter.Meters / 2;
        double top = joint.TopPadDiameter.Meters / 2;
        double bottom = joint.BottomPadDiameter.Meters / 2;
        return new JointGeometry
        {
            CoreRadius = leg,
            BarrelInner = inner,
            BarrelOuter = inner + joint.BarrelWall.Central.Meters,
            TopPad = top,
            BottomPad = bottom,
            InnerLand = joint.InnerLandDiameter.Meters / 2,
            TopSolder = FilletRing(leg, top, joint.TopFilletHeight.Meters),
            TopFoot = 0,
            BottomSolder = FilletRing(leg, bottom, joint.BottomFilletHeight.Meters),
            SolderInBarrel = true,
        };
    }

    private static JointGeometry Of(SurfaceJoint joint)
    {
        double pad = joint.PadEquivalentDiameter.Meters / 2;
        double vias = Math.Sqrt(joint.ViaCopper.SquareMeters / Math.PI);
        return new JointGeometry
        {
            CoreRadius = vias,
            BarrelInner = vias,
            BarrelOuter = vias,
            TopPad = pad,
            BottomPad = 0,
            InnerLand = vias,
            TopSolder = joint.SolderThickness.Meters,
            TopFoot = joint.FootThickness.Meters,
            BottomSolder = 0,
            SolderInBarrel = false,
        };
    }

    // A cone from the leg at the fillet's height to the edge of the pad, spread evenly over the pad.
    private static double FilletRing(double leg, double pad, double height) =>
        height <= 0 ? 0 : Math.PI * height / 3 * ((pad * pad) + (pad * leg) - (2 * leg * leg)) / (Math.PI * ((pad * pad) - (leg * leg)));
}
