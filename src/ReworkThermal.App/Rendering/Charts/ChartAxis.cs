namespace ReworkThermal.App.Rendering.Charts;

/// <summary>A linear axis: range, ticks at round values, and the way from a value to a place on the drawing.</summary>
internal sealed class ChartAxis
{
    private readonly double _low;
    private readonly double _high;
    private readonly double _start;
    private readonly double _length;

    /// <summary>Lays an axis over a range of values.</summary>
    /// <param name="values">Values that must fit, at least one, all finite.</param>
    /// <param name="start">Place of the low end [px].</param>
    /// <param name="length">Way from the low to the high end [px]; negative when the axis runs upwards.</param>
    internal ChartAxis(IEnumerable<double> values, double start, double length)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (double value in values)
        {
            low = Math.Min(low, value);
            high = Math.Max(high, value);
        }

        double span = high > low ? high - low : Math.Max(Math.Abs(low), 1);
        double step = RoundStep(span / 6);
        _low = Math.Floor((low + (1e-9 * span)) / step) * step;
        _high = Math.Ceiling((high - (1e-9 * span)) / step) * step;
        _high = _high > _low ? _high : _low + step;
        _start = start;
        _length = length;
        Digits = Math.Max(0, (int)Math.Ceiling(-Math.Log10(step) - 1e-9));
        int count = (int)Math.Round((_high - _low) / step);
        Ticks = [.. Enumerable.Range(0, count + 1).Select(i => _low + (i * step))];
    }

    /// <summary>Values with a tick and a label.</summary>
    internal IReadOnlyList<double> Ticks { get; }

    /// <summary>Digits after the point that tell neighbouring ticks apart.</summary>
    internal int Digits { get; }

    /// <summary>Place of a value.</summary>
    /// <param name="value">The value.</param>
    /// <returns>Place on the drawing [px].</returns>
    internal double At(double value) => _start + ((value - _low) / (_high - _low) * _length);

    /// <summary>Next greater step of the kind 1, 2 or 5 times a power of ten.</summary>
    private static double RoundStep(double atLeast)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(atLeast)));
        double factor = atLeast / power;
        return power * (factor <= 1 ? 1 : factor <= 2 ? 2 : factor <= 5 ? 5 : 10);
    }
}
