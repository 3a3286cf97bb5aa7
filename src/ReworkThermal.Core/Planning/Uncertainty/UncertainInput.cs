using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>
/// An input that is known within a range. It is spread as a normal variable to either side of the central value, in the logarithm for
/// quantities that cannot be negative; the range is read as holding nine benches in ten, so its ends are 1.645 standard deviations
/// from the centre (judgement: the sources give ranges, not distributions).
/// </summary>
/// <param name="Kind">Which input.</param>
/// <param name="Name">Name for reports.</param>
/// <param name="Unit">Unit of the values; empty for a plain number.</param>
/// <param name="Central">Central value.</param>
/// <param name="Low">Lower end of the range.</param>
/// <param name="High">Upper end of the range.</param>
/// <param name="IsLogarithmic">Whether it is spread in its logarithm; then all values are above zero.</param>
/// <param name="Provenance">Where the range comes from.</param>
/// <param name="HowToLearn">What a technician can do to know it better, one clause.</param>
public sealed record UncertainInput(
    InputKind Kind,
    string Name,
    string Unit,
    double Central,
    double Low,
    double High,
    bool IsLogarithmic,
    Provenance Provenance,
    string HowToLearn)
{
    /// <summary>Standard deviations between the centre and either end: nine in ten lie between.</summary>
    public const double RangeEnd = 1.6448536269514722;

    /// <summary>The value at a number of standard deviations from the centre.</summary>
    /// <param name="deviations">Standard deviations, any finite number; negative for below.</param>
    /// <returns>The value in <see cref="Unit"/>.</returns>
    public double At(double deviations)
    {
        double end = deviations < 0 ? Low : High;
        double steps = Math.Abs(deviations) / RangeEnd;
        return IsLogarithmic ? Central * Math.Pow(end / Central, steps) : Central + (steps * (end - Central));
    }

    /// <summary>The value over the central one; only for logarithmic inputs.</summary>
    internal double FactorAt(double deviations) => At(deviations) / Central;
}
