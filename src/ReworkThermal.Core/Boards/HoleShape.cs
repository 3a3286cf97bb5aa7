using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>Shape of a finished (plated) hole.</summary>
public abstract record HoleShape
{
    private HoleShape()
    {
    }

    /// <summary>Open cross-section.</summary>
    public abstract Area Area { get; }

    /// <summary>Narrowest width of the opening.</summary>
    public abstract Length Narrow { get; }

    /// <summary>Widest width of the opening.</summary>
    public abstract Length Wide { get; }

    /// <summary>Diameter of the round hole of the same cross-section.</summary>
    public Length EquivalentDiameter => Section.DiameterOfDisc(Area);

    /// <summary>A drilled hole.</summary>
    public sealed record Round : HoleShape
    {
        /// <summary>Creates a round hole.</summary>
        /// <param name="diameter">Finished diameter, above zero.</param>
        public Round(Length diameter) => Diameter = Dimension.Positive(diameter, "hole.diameter");

        /// <summary>Finished diameter.</summary>
        public Length Diameter { get; }

        /// <inheritdoc/>
        public override Area Area => Section.Disc(Diameter);

        /// <inheritdoc/>
        public override Length Narrow => Diameter;

        /// <inheritdoc/>
        public override Length Wide => Diameter;
    }

    /// <summary>A routed slot with round ends.</summary>
    public sealed record Slot : HoleShape
    {
        /// <summary>Creates a slot.</summary>
        /// <param name="length">Finished length over the round ends, not below the width.</param>
        /// <param name="width">Finished width, above zero.</param>
        public Slot(Length length, Length width)
        {
            Width = Dimension.Positive(width, "hole.width");
            Length = length >= width ? Dimension.Positive(length, "hole.length") : throw new ImpossibleGeometryException("hole.length", "must not be below hole.width");
        }

        /// <summary>Finished length over the round ends.</summary>
        public Length Length { get; }

        /// <summary>Finished width.</summary>
        public Length Width { get; }

        /// <inheritdoc/>
        public override Area Area => Section.Slot(Length, Width);

        /// <inheritdoc/>
        public override Length Narrow => Width;

        /// <inheritdoc/>
        public override Length Wide => Length;
    }
}
