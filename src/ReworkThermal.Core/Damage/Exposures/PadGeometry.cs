using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Exposures;

/// <summary>What of a pad's shape matters to its damage.</summary>
public abstract record PadGeometry
{
    private PadGeometry(Length width, FoilProfile foil)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width.Meters, nameof(width));
        Width = width;
        Foil = foil;
    }

    /// <summary>Width of the pad, or its outer diameter [m], above zero.</summary>
    public Length Width { get; }

    /// <summary>Roughness of its foil.</summary>
    public FoilProfile Foil { get; }

    /// <summary>Copper that solder can dissolve: the barrel wall at the knee, or the land [m].</summary>
    public abstract Estimate<Length> Copper { get; }

    /// <summary>A pad around a plated hole.</summary>
    public sealed record Through : PadGeometry
    {
        /// <summary>Creates the geometry.</summary>
        /// <param name="width">Outer diameter of the pad, above the hole's.</param>
        /// <param name="hole">Diameter of the hole, above zero.</param>
        /// <param name="wall">Thickness of the hole copper as made.</param>
        /// <param name="boardThickness">Thickness of the board, above zero.</param>
        /// <param name="foil">Roughness of the foil.</param>
        /// <exception cref="ArgumentOutOfRangeException">A length is not above zero, or the parts do not fit each other.</exception>
        public Through(Length width, Length hole, Estimate<Length> wall, Length boardThickness, FoilProfile foil = FoilProfile.Standard)
            : base(width, foil)
        {
            ArgumentNullException.ThrowIfNull(wall);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hole.Meters, nameof(hole));
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(boardThickness.Meters, nameof(boardThickness));
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wall.Low.Meters, nameof(wall));
            if (width <= hole || wall.High * 2 >= hole)
            {
                throw new ArgumentOutOfRangeException(nameof(hole), "the hole must be narrower than the pad and wider than twice its wall");
            }

            Hole = hole;
            Copper = wall;
            BoardThickness = boardThickness;
        }

        /// <summary>Diameter of the hole [m].</summary>
        public Length Hole { get; }

        /// <summary>Thickness of the board [m].</summary>
        public Length BoardThickness { get; }

        /// <inheritdoc/>
        public override Estimate<Length> Copper { get; }
    }

    /// <summary>A pad without a plated hole: nothing but its bond holds it.</summary>
    public sealed record Surface : PadGeometry
    {
        /// <summary>Creates the geometry.</summary>
        /// <param name="width">Width of the pad, across the pull.</param>
        /// <param name="land">Thickness of the land as made.</param>
        /// <param name="foil">Roughness of the foil.</param>
        /// <exception cref="ArgumentOutOfRangeException">A length is not above zero.</exception>
        public Surface(Length width, Estimate<Length> land, FoilProfile foil = FoilProfile.Standard)
            : base(width, foil)
        {
            ArgumentNullException.ThrowIfNull(land);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(land.Low.Meters, nameof(land));
            Copper = land;
        }

        /// <inheritdoc/>
        public override Estimate<Length> Copper { get; }
    }
}
