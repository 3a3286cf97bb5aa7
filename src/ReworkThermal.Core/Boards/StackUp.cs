using System.Globalization;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>
/// Copper layers from top to bottom with the dielectric between them. A board of one copper layer has one dielectric below it;
/// otherwise there is one dielectric less than copper layers.
/// </summary>
public sealed record StackUp
{
    // Nominal thicknesses are rounded when they are written down; the sum may miss the board's by this share.
    private const double SumTolerance = 0.03;

    /// <summary>Creates a stack-up.</summary>
    /// <param name="copper">Copper layers from top to bottom, at least one.</param>
    /// <param name="dielectrics">Thickness of the dielectric under each copper layer but the last, each above zero.</param>
    /// <param name="thickness">Stated thickness of the whole board over copper; must match the sum within 3 %.</param>
    /// <exception cref="ImpossibleGeometryException">The counts or the sum do not fit.</exception>
    public StackUp(IReadOnlyList<CopperLayer> copper, IReadOnlyList<Length> dielectrics, Length thickness)
    {
        ArgumentNullException.ThrowIfNull(copper);
        ArgumentNullException.ThrowIfNull(dielectrics);
        Dimension.Positive(thickness, "thickness");
        if (copper.Count == 0)
        {
            throw new ImpossibleGeometryException("copper", "must list at least one copper layer");
        }

        int wanted = Math.Max(1, copper.Count - 1);
        if (dielectrics.Count != wanted)
        {
            throw new ImpossibleGeometryException(
                "dielectrics",
                string.Create(CultureInfo.InvariantCulture, $"must list {wanted} thickness(es) for {copper.Count} copper layer(s), got {dielectrics.Count}"));
        }

        foreach (Length dielectric in dielectrics)
        {
            Dimension.Positive(dielectric, "dielectrics");
        }

        double sum = copper.Sum(c => c.Thickness.Central.Meters) + dielectrics.Sum(d => d.Meters);
        if (Math.Abs(sum - thickness.Meters) > SumTolerance * thickness.Meters)
        {
            throw new ImpossibleGeometryException(
                "thickness",
                string.Create(CultureInfo.InvariantCulture, $"is {thickness.Millimeters:0.###} mm, but copper and dielectrics add up to {sum * 1e3:0.###} mm; correct one of them"));
        }

        Copper = [.. copper];
        Dielectrics = [.. dielectrics];
        Thickness = Length.FromMeters(sum);
    }

    /// <summary>Copper layers from top to bottom.</summary>
    public IReadOnlyList<CopperLayer> Copper { get; }

    /// <summary>Dielectric under each copper layer but the last (under the only one of a single-layer board).</summary>
    public IReadOnlyList<Length> Dielectrics { get; }

    /// <summary>Sum of all layers; this is what is modelled.</summary>
    public Length Thickness { get; }

    /// <summary>The same stack-up with every copper thickness scaled, dielectrics unchanged; for sampling an uncertain copper load.</summary>
    /// <param name="factor">Above zero.</param>
    /// <returns>The scaled stack-up.</returns>
    public StackUp WithCopperScaled(double factor)
    {
        List<CopperLayer> scaled = [.. Copper.Select(c => c with
        {
            Thickness = c.Thickness with
            {
                Central = c.Thickness.Central * factor,
                Low = c.Thickness.Low * Math.Min(1, factor),
                High = c.Thickness.High * Math.Max(1, factor),
            },
        })];
        double sum = scaled.Sum(c => c.Thickness.Central.Meters) + Dielectrics.Sum(d => d.Meters);
        return new StackUp(scaled, Dielectrics, Length.FromMeters(sum));
    }
}
