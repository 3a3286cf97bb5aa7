namespace ReworkThermal.Core.HeatFlow;

/// <summary>
/// Temperature of one place against time, simulated or measured alike. Between samples the temperature is linear.
/// </summary>
public sealed class TemperatureHistory
{
    private readonly double[] _seconds;
    private readonly double[] _celsius;

    /// <summary>Creates a history from samples.</summary>
    /// <param name="seconds">Sample times [s], strictly rising; at least one.</param>
    /// <param name="celsius">Temperatures [°C] at those times, finite, above absolute zero; same length.</param>
    /// <exception cref="ArgumentException">The lengths differ, are zero, a time does not rise, or a value is not finite.</exception>
    public TemperatureHistory(ReadOnlySpan<double> seconds, ReadOnlySpan<double> celsius)
    {
        if (seconds.Length == 0 || seconds.Length != celsius.Length)
        {
            throw new ArgumentException("a history needs as many temperatures as times, and at least one", nameof(seconds));
        }

        for (int i = 0; i < seconds.Length; i++)
        {
            if (!double.IsFinite(seconds[i]) || !double.IsFinite(celsius[i]) || celsius[i] <= -273.15)
            {
                throw new ArgumentException("times and temperatures must be finite and above absolute zero", nameof(seconds));
            }

            if (i > 0 && seconds[i] <= seconds[i - 1])
            {
                throw new ArgumentException("times must rise", nameof(seconds));
            }
        }

        _seconds = seconds.ToArray();
        _celsius = celsius.ToArray();
    }

    /// <summary>Sample times [s].</summary>
    public ReadOnlySpan<double> Seconds => _seconds;

    /// <summary>Temperatures at the sample times [°C].</summary>
    public ReadOnlySpan<double> Celsius => _celsius;

    /// <summary>Highest sampled temperature [°C].</summary>
    public double PeakCelsius => _celsius.Max();

    /// <summary>First time at which the temperature has risen to a value, linear between samples.</summary>
    /// <param name="celsius">Temperature [°C].</param>
    /// <returns>Time [s], the first sample's when it is there already; null when it never is.</returns>
    public double? FirstAt(double celsius)
    {
        if (_celsius[0] >= celsius)
        {
            return _seconds[0];
        }

        for (int i = 1; i < _celsius.Length; i++)
        {
            if (_celsius[i] >= celsius)
            {
                return _seconds[i - 1] + ((_seconds[i] - _seconds[i - 1]) * (celsius - _celsius[i - 1]) / (_celsius[i] - _celsius[i - 1]));
            }
        }

        return null;
    }

    /// <summary>Temperature at a time, linear between samples; the end values beyond the ends.</summary>
    /// <param name="seconds">Time [s].</param>
    /// <returns>Temperature [°C].</returns>
    public double At(double seconds)
    {
        int found = Array.BinarySearch(_seconds, seconds);
        if (found >= 0)
        {
            return _celsius[found];
        }

        int next = ~found;
        if (next == 0)
        {
            return _celsius[0];
        }

        if (next == _seconds.Length)
        {
            return _celsius[^1];
        }

        double share = (seconds - _seconds[next - 1]) / (_seconds[next] - _seconds[next - 1]);
        return _celsius[next - 1] + (share * (_celsius[next] - _celsius[next - 1]));
    }
}
