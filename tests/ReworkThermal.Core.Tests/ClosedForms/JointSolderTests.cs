using MathNet.Numerics.Integration;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>Solder volumes against solids of revolution worked out another way.</summary>
public class JointSolderTests
{
    private static readonly Length _thickness = Length.FromMillimeters(1.6);

    [Fact]
    public void Straight_fillet_is_a_truncated_cone_without_its_leg()
    {
        ThroughJoint joint = Joint(topFilletMm: 0.6, bottomFilletMm: 0);
        double padR = joint.TopPadDiameter.Millimeters / 2;
        double legR = joint.Leg!.Shape.EquivalentDiameter.Millimeters / 2;
        double cone = (Math.PI * 0.6 / 3 * ((padR * padR) + (padR * legR) + (legR * legR))) - (Math.PI * legR * legR * 0.6);
        double barrel = (joint.HoleArea.SquareMillimeters - joint.LegCrossSection.SquareMillimeters) * 1.6;
        Assert.Equal(barrel + cone, JointSolder.VolumeIn(joint, _thickness, FilletShape.Straight).CubicMillimeters, 9);
    }

    [Fact]
    public void Hollow_fillet_is_the_quadrature_of_its_outline()
    {
        ThroughJoint joint = Joint(topFilletMm: 0.6, bottomFilletMm: 0);
        double padR = joint.TopPadDiameter.Millimeters / 2;
        double legR = joint.Leg!.Shape.EquivalentDiameter.Millimeters / 2;
        double width = padR - legR;

        // Height of a quarter ellipse centred above the pad edge, integrated in shells 2 pi r h(r) dr.
        double fillet = GaussLegendreRule.Integrate(
            r => 2 * Math.PI * r * 0.6 * (1 - Math.Sqrt(Math.Max(0, 1 - Math.Pow((padR - r) / width, 2)))), legR, padR, 200);
        double barrel = (joint.HoleArea.SquareMillimeters - joint.LegCrossSection.SquareMillimeters) * 1.6;
        Assert.Equal(barrel + fillet, JointSolder.VolumeIn(joint, _thickness, FilletShape.Hollow).CubicMillimeters, 5);
    }

    [Fact]
    public void Hollow_fillets_hold_less_than_straight_ones()
    {
        ThroughJoint joint = Joint(topFilletMm: 0.4, bottomFilletMm: 0.5);
        Assert.True(JointSolder.VolumeIn(joint, _thickness, FilletShape.Hollow) < JointSolder.VolumeIn(joint, _thickness, FilletShape.Straight));
    }

    private static ThroughJoint Joint(double topFilletMm, double bottomFilletMm)
    {
        ThroughJoint shipped = Assert.IsType<ThroughJoint>(PlanDemo.Workshop.Profiles.Joints["jack-anchor-six-layer"].Joint);
        return shipped with
        {
            TopFilletHeight = Length.FromMillimeters(topFilletMm),
            BottomFilletHeight = Length.FromMillimeters(bottomFilletMm),
        };
    }
}
