using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>Cross-section of a leg.</summary>
public abstract record LegShape
{
    private LegShape()
    {
    }

    /// <summary>Cross-section.</summary>
    public abstract Area Area { get; }

    /// <summary>Smallest width.</summary>
    public abstract Length Narrow { get; }

    /// <summary>Largest width.</summary>
    public abstract Length Wide { get; }

    /// <summary>Diameter of the round leg of the same cross-section.</summary>
    public Length EquivalentDiameter => Section.DiameterOfDisc(Area);

    /// <summary>Whether the leg goes through a hole.</summary>
    /// <param name="hole">The finished hole.</param>
    /// <returns>True when the section fits in the opening with no overlap.</returns>
    public abstract bool Fits(HoleShape hole);

    /// <summary>A wire or turned pin.</summary>
    public sealed record Round : LegShape
    {
        /// <summary>Creates a round leg.</summary>
        /// <param name="diameter">Diameter, above zero.</param>
        public Round(Length diameter) => Diameter = Dimension.Positive(diameter, "leg.diameter");

        /// <summary>Diameter.</summary>
        public Length Diameter { get; }

        /// <inheritdoc/>
        public override Area Area => Section.Disc(Diameter);

        /// <inheritdoc/>
        public override Length Narrow => Diameter;

        /// <inheritdoc/>
        public override Length Wide => Diameter;

        /// <inheritdoc/>
        public override bool Fits(HoleShape hole)
        {
            ArgumentNullException.ThrowIfNull(hole);
            return Diameter < hole.Narrow;
        }
    }

    /// <summary>A stamped pin of rectangular section.</summary>
    public sealed record Rectangular : LegShape
    {
        /// <summary>Creates a rectangular leg.</summary>
        /// <param name="width">Larger side, above zero.</param>
        /// <param name="thickness">Smaller side, above zero.</param>
        public Rectangular(Length width, Length thickness)
        {
            Thickness = Dimension.Positive(thickness, "leg.thickness");
            Width = width >= thickness ? Dimension.Positive(width, "leg.width") : throw new ImpossibleGeometryException("leg.width", "must not be below leg.thickness");
        }

        /// <summary>Larger side.</summary>
        public Length Width { get; }

        /// <summary>Smaller side.</summary>
        public Length Thickness { get; }

        /// <inheritdoc/>
        public override Area Area => Width * Thickness;

        /// <inheritdoc/>
        public override Length Narrow => Thickness;

        /// <inheritdoc/>
        public override Length Wide => Width;

        /// <inheritdoc/>
        public override bool Fits(HoleShape hole)
        {
            ArgumentNullException.ThrowIfNull(hole);

            // The corner must lie inside the round end: at half thickness the end circle leaves this much half-width.
            double end = hole.Narrow.Meters / 2;
            double half = Thickness.Meters / 2;
            double straight = (hole.Wide.Meters - hole.Narrow.Meters) / 2;
            return half < end && Width.Meters / 2 < straight + Math.Sqrt((end * end) - (half * half));
        }
    }

    /// <summary>A blade with rounded edges.</summary>
    public sealed record Slot : LegShape
    {
        /// <summary>Creates a blade.</summary>
        /// <param name="width">Width over the rounded edges, not below the thickness.</param>
        /// <param name="thickness">Thickness, above zero.</param>
        public Slot(Length width, Length thickness)
        {
            Thickness = Dimension.Positive(thickness, "leg.thickness");
            Width = width >= thickness ? Dimension.Positive(width, "leg.width") : throw new ImpossibleGeometryException("leg.width", "must not be below leg.thickness");
        }

        /// <summary>Width over the rounded edges.</summary>
        public Length Width { get; }

        /// <summary>Thickness.</summary>
        public Length Thickness { get; }

        /// <inheritdoc/>
        public override Area Area => Section.Slot(Width, Thickness);

        /// <inheritdoc/>
        public override Length Narrow => Thickness;

        /// <inheritdoc/>
        public override Length Wide => Width;

        /// <inheritdoc/>
        public override bool Fits(HoleShape hole)
        {
            ArgumentNullException.ThrowIfNull(hole);
            return Thickness < hole.Narrow && Width < hole.Wide;
        }
    }
}
