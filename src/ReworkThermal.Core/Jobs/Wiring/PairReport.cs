using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Figures of a pair over jumper wires; low and high for the field wholly in air and wholly in the insulation.</summary>
/// <param name="Mismatch">Difference of the lengths.</param>
/// <param name="SkewLow">Difference of the delays, field in air.</param>
/// <param name="SkewHigh">Difference of the delays, field in the insulation.</param>
/// <param name="BitTime">Length of one bit.</param>
/// <param name="SkewShareHigh">The larger skew as a share of the bit time.</param>
/// <param name="ImpedanceLow">Of the two wires side by side, field in the insulation; null when they are not kept together.</param>
/// <param name="ImpedanceHigh">The same, field in air.</param>
/// <param name="Concerns">What speaks against it; empty when nothing does. No published limit for such wires was found: the limits are judgement.</param>
public sealed record PairReport(
    Length Mismatch,
    Duration SkewLow,
    Duration SkewHigh,
    Duration BitTime,
    double SkewShareHigh,
    ElectricResistance? ImpedanceLow,
    ElectricResistance? ImpedanceHigh,
    IReadOnlyList<PairConcern> Concerns);
