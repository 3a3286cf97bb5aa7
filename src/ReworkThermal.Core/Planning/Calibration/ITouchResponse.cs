namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>What a touch does, as a function of the learnable inputs: the simulator, or something quicker that stands in for it.</summary>
internal interface ITouchResponse
{
    /// <summary>What is expected of an observed touch.</summary>
    /// <param name="touch">Which, from 0.</param>
    /// <param name="deviations">Learnable inputs in standard deviations from the centres of their ranges.</param>
    /// <returns>Natural logarithm of the seconds to flow, or the temperature of the probe [°C] for a reading.</returns>
    public double Expected(int touch, ReadOnlySpan<double> deviations);
}
