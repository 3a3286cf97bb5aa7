using ReworkThermal.Core.Planning.Uncertainty;

namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>An input after a calibration. Its range is the middle eight tenths; before, the input's own range is used.</summary>
/// <param name="Input">The input with its range before.</param>
/// <param name="Value">Most likely value.</param>
/// <param name="Low">Lower end of the middle eight tenths.</param>
/// <param name="High">Upper end of the middle eight tenths.</param>
public sealed record LearnedInput(UncertainInput Input, double Value, double Low, double High)
{
    /// <summary>Standard deviations from the centre to either end of the middle eight tenths of a normal variable.</summary>
    public const double MiddleEightTenths = 1.2815515655446004;

    /// <summary>Lower end of the middle eight tenths before.</summary>
    public double LowBefore => Input.At(-MiddleEightTenths);

    /// <summary>Upper end of the middle eight tenths before.</summary>
    public double HighBefore => Input.At(MiddleEightTenths);
}
