using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>Areas of the sections that holes, legs and pads are made of.</summary>
internal static class Section
{
    /// <summary>Area of a disc.</summary>
    internal static Area Disc(Length diameter) => Area.FromSquareMeters(Math.PI * diameter.Meters * diameter.Meters / 4);

    /// <summary>Area of a rectangle with a half disc at either short side.</summary>
    /// <param name="length">Length over the round ends, not below the width.</param>
    /// <param name="width">Width: the diameter of the ends.</param>
    internal static Area Slot(Length length, Length width) => Area.FromSquareMeters(
        (Math.PI * width.Meters * width.Meters / 4) + ((length.Meters - width.Meters) * width.Meters));

    /// <summary>Diameter of the disc of an area.</summary>
    internal static Length DiameterOfDisc(Area area) => Length.FromMeters(2 * Math.Sqrt(area.SquareMeters / Math.PI));
}
