using ReworkThermal.Core.HeatFlow;

namespace ReworkThermal.Core.Jobs;

/// <summary>
/// Keeps few samples of a temperature series: splits at the sample farthest from the straight line until every sample is near its
/// line, then rounds times to 0.1 ms and temperatures to 0.01 K and checks the result against every original sample.
/// </summary>
internal static class SeriesThinning
{
    private const double TimeStepsPerSecond = 1e4;
    private const double TemperatureStepsPerKelvin = 100;

    /// <summary>Thins a series.</summary>
    /// <param name="history">Original samples.</param>
    /// <param name="maxErrorK">Allowed difference at every original sample [K], above zero.</param>
    /// <returns>A series within the allowed difference; the original itself when rounding alone would break it.</returns>
    internal static TemperatureHistory Thin(TemperatureHistory history, double maxErrorK)
    {
        for (double lineErrorK = 0.9 * maxErrorK; lineErrorK > 0.01 * maxErrorK; lineErrorK /= 2)
        {
            TemperatureHistory? thinned = Rounded(history, Keep(history.Seconds, history.Celsius, lineErrorK));
            if (thinned is not null && LargestDifference(history, thinned) <= maxErrorK)
            {
                return thinned;
            }
        }

        return history;
    }

    /// <summary>Largest difference between a series and the samples of another [K]; outside its times a series is constant.</summary>
    internal static double LargestDifference(TemperatureHistory original, TemperatureHistory kept)
    {
        double largest = 0;
        for (int i = 0; i < original.Seconds.Length; i++)
        {
            largest = Math.Max(largest, Math.Abs(original.Celsius[i] - kept.At(original.Seconds[i])));
        }

        return largest;
    }

    private static List<int> Keep(ReadOnlySpan<double> seconds, ReadOnlySpan<double> celsius, double errorK)
    {
        bool[] kept = new bool[seconds.Length];
        kept[0] = kept[^1] = true;
        Stack<(int From, int To)> open = new();
        open.Push((0, seconds.Length - 1));
        while (open.TryPop(out (int From, int To) span))
        {
            double worst = errorK;
            int at = -1;
            double slope = span.To > span.From
                ? (celsius[span.To] - celsius[span.From]) / (seconds[span.To] - seconds[span.From])
                : 0;
            for (int i = span.From + 1; i < span.To; i++)
            {
                double off = Math.Abs(celsius[i] - celsius[span.From] - (slope * (seconds[i] - seconds[span.From])));
                if (off > worst)
                {
                    worst = off;
                    at = i;
                }
            }

            if (at > 0)
            {
                kept[at] = true;
                open.Push((span.From, at));
                open.Push((at, span.To));
            }
        }

        return [.. Enumerable.Range(0, kept.Length).Where(i => kept[i])];
    }

    private static TemperatureHistory? Rounded(TemperatureHistory history, List<int> kept)
    {
        double[] seconds = new double[kept.Count];
        double[] celsius = new double[kept.Count];
        for (int i = 0; i < kept.Count; i++)
        {
            seconds[i] = Math.Round(history.Seconds[kept[i]] * TimeStepsPerSecond) / TimeStepsPerSecond;
            celsius[i] = Math.Round(history.Celsius[kept[i]] * TemperatureStepsPerKelvin) / TemperatureStepsPerKelvin;
            if (i > 0 && seconds[i] <= seconds[i - 1])
            {
                return null;
            }
        }

        return new TemperatureHistory(seconds, celsius);
    }
}
