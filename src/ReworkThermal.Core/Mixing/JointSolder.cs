using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>
/// Solder in a through-hole joint from its geometry: the barrel minus the leg, plus a fillet on either side as a volume of revolution.
/// A rectangular or slotted leg counts as the round one of equal cross-section, a slot as the round hole of equal area.
/// </summary>
public static class JointSolder
{
    /// <summary>Volume of solder in a joint that is filled through.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="boardThickness">Thickness of the board, above zero.</param>
    /// <param name="shape">How full the fillets are.</param>
    /// <returns>Volume.</returns>
    public static Volume VolumeIn(ThroughJoint joint, Length boardThickness, FilletShape shape)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(boardThickness.Meters, nameof(boardThickness));
        Volume barrel = (joint.HoleArea - joint.LegCrossSection) * boardThickness;
        if (joint.Leg is null)
        {
            return barrel;
        }

        double leg = joint.Leg.Shape.EquivalentDiameter.Meters / 2;
        return barrel
            + Volume.FromCubicMeters(FilletM3(leg, joint.TopPadDiameter.Meters / 2, joint.TopFilletHeight.Meters, shape))
            + Volume.FromCubicMeters(FilletM3(leg, joint.BottomPadDiameter.Meters / 2, joint.BottomFilletHeight.Meters, shape));
    }

    /// <summary>The solder in a joint as a charge.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="boardThickness">Thickness of the board, above zero.</param>
    /// <param name="solder">Composition of the solder.</param>
    /// <param name="properties">Density rules.</param>
    /// <param name="shape">How full the fillets are.</param>
    /// <returns>Mass and composition.</returns>
    public static SolderCharge ChargeIn(
        ThroughJoint joint,
        Length boardThickness,
        MassFractions solder,
        SolderProperties properties,
        FilletShape shape = FilletShape.Hollow)
    {
        ArgumentNullException.ThrowIfNull(properties);
        return new SolderCharge(VolumeIn(joint, boardThickness, shape) * properties.SolidDensity(solder), solder);
    }

    // Pappus: 2 pi times the moment of the section about the axis. The section lies between leg (radius a) and pad edge (radius R), height h at
    // the leg. Straight: a right triangle. Hollow: the rectangle less a quarter ellipse centred at the top of the pad edge.
    private static double FilletM3(double legRadiusM, double padRadiusM, double heightM, FilletShape shape)
    {
        double width = padRadiusM - legRadiusM;
        if (width <= 0 || heightM <= 0)
        {
            return 0;
        }

        double moment = shape switch
        {
            FilletShape.Straight => width * heightM / 2 * (legRadiusM + (width / 3)),
            FilletShape.Hollow => (width * heightM * (legRadiusM + (width / 2)))
                - (Math.PI * width * heightM / 4 * (padRadiusM - (4 * width / (3 * Math.PI)))),
            _ => throw new ArgumentOutOfRangeException(nameof(shape)),
        };
        return 2 * Math.PI * moment;
    }
}
