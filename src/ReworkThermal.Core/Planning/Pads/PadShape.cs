using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Damage.Exposures;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Pads;

/// <summary>What of a joint matters to the damage of its pads.</summary>
public static class PadShape
{
    /// <summary>The pad of a joint: the narrower of the two pads of a plated hole, or the land of a surface joint.</summary>
    /// <param name="site">The joint on its board.</param>
    /// <returns>Its shape.</returns>
    public static PadGeometry Of(JointSite site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return site.Joint switch
        {
            ThroughJoint through => new PadGeometry.Through(
                UnitMath.Min(through.TopPadDiameter, through.BottomPadDiameter),
                through.BarrelInnerDiameter,
                through.BarrelWall,
                site.Board.StackUp.Thickness),
            SurfaceJoint surface => new PadGeometry.Surface(
                UnitMath.Min(surface.PadWidth, surface.PadLength),
                site.Board.StackUp.Copper[0].Thickness),
            _ => throw new InvalidOperationException("unknown kind of joint"),
        };
    }
}
