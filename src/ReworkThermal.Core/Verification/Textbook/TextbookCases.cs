using ReworkThermal.Core.Tools;

namespace ReworkThermal.Core.Verification.Textbook;

/// <summary>
/// Every case of the reference table thermal.csv that a one-dimensional layered or an axisymmetric solver can pose. A case gives its
/// figures in the order of its rows, in the unit of each row.
/// </summary>
public static class TextbookCases
{
    /// <summary>Planar two-dimensional cases of the table: an axisymmetric solver cannot pose them.</summary>
    public static IReadOnlyList<string> NotPosed { get; } = ["TB35", "TB37"];

    /// <summary>The posed cases by name.</summary>
    public static IReadOnlyDictionary<string, Func<double[]>> Posed { get; } = PosedSlabs.Cases
        .Concat(PosedRings.Cases)
        .Concat(PosedMelting.Cases)
        .Append(new("TB46", PlatedHole.Figures))
        .Append(new("TB47", () =>
        [
            RoundJet.MeanNusselt(5000, 0.69, 2, 2.5),
            RoundJet.MeanNusselt(5000, 0.69, 2, 5),
            RoundJet.MeanNusselt(20000, 0.69, 2, 2.5),
            RoundJet.MeanNusselt(20000, 0.69, 2, 5),
        ]))
        .Append(new("TB48", () =>
        [
            ViewFactor.CoaxialDiscs(0.5, 0.5, 1),
            ViewFactor.CoaxialDiscs(40, 40, 20),
            ViewFactor.AlignedRectangles(1, 1, 1),
            ViewFactor.AlignedRectangles(120, 120, 20),
        ]))
        .ToDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal);
}
