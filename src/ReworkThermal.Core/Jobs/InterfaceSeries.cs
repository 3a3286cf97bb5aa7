using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>
/// Temperature against time at the interface of a pad and its laminate, as it is kept. A measured series is kept sample by sample.
/// A simulated one is thinned to the fewest samples whose straight lines stay within <see cref="MaxError"/> of every sample of the
/// original.
/// </summary>
public sealed class InterfaceSeries
{
    /// <summary>
    /// Error allowed when a simulated series is thinned [K]. Chosen, not published: near 260 °C and at an activation energy of
    /// 150 kJ/mol a quarter of a kelvin changes a rate by 1.6 %, far below what else is uncertain about it.
    /// </summary>
    public const double DefaultMaxErrorKelvins = 0.25;

    private InterfaceSeries(SeriesOrigin origin, TemperatureHistory history, double maxErrorKelvins)
    {
        Origin = origin;
        History = history;
        MaxErrorKelvins = maxErrorKelvins;
    }

    /// <summary>Whether the temperatures were computed or measured.</summary>
    public SeriesOrigin Origin { get; }

    /// <summary>The kept samples; time zero is the beginning of the touch.</summary>
    public TemperatureHistory History { get; }

    /// <summary>Largest difference between the kept lines and any original sample; zero for a measured series.</summary>
    public TemperatureDelta MaxError => TemperatureDelta.FromKelvins(MaxErrorKelvins);

    /// <summary>The same in kelvins.</summary>
    internal double MaxErrorKelvins { get; }

    /// <summary>Keeps a simulated series within <see cref="DefaultMaxErrorKelvins"/>.</summary>
    /// <param name="history">The computed samples.</param>
    /// <returns>The series.</returns>
    public static InterfaceSeries Simulated(TemperatureHistory history) =>
        Simulated(history, TemperatureDelta.FromKelvins(DefaultMaxErrorKelvins));

    /// <summary>Keeps a simulated series within a stated error.</summary>
    /// <param name="history">The computed samples.</param>
    /// <param name="maxError">Error allowed, above zero.</param>
    /// <returns>The series.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The error is not a finite number above zero.</exception>
    public static InterfaceSeries Simulated(TemperatureHistory history, TemperatureDelta maxError)
    {
        ArgumentNullException.ThrowIfNull(history);
        double kelvins = maxError.Kelvins;
        if (!double.IsFinite(kelvins) || kelvins <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(maxError), kelvins, "the error must be a finite number of kelvins above zero");
        }

        return new InterfaceSeries(SeriesOrigin.Simulated, SeriesThinning.Thin(history, kelvins), kelvins);
    }

    /// <summary>Keeps a measured series as it is.</summary>
    /// <param name="history">The measured samples.</param>
    /// <returns>The series.</returns>
    public static InterfaceSeries Measured(TemperatureHistory history)
    {
        ArgumentNullException.ThrowIfNull(history);
        return new InterfaceSeries(SeriesOrigin.Measured, history, 0);
    }

    /// <summary>Rebuilds a series from its stored parts, without thinning it again.</summary>
    /// <param name="origin">Where the temperatures came from.</param>
    /// <param name="history">The kept samples.</param>
    /// <param name="maxError">The error stated when it was kept.</param>
    /// <returns>The series.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The error does not fit the origin.</exception>
    public static InterfaceSeries Restore(SeriesOrigin origin, TemperatureHistory history, TemperatureDelta maxError)
    {
        ArgumentNullException.ThrowIfNull(history);
        double kelvins = maxError.Kelvins;
        bool fits = origin == SeriesOrigin.Measured ? kelvins == 0 : double.IsFinite(kelvins) && kelvins > 0;
        return fits
            ? new InterfaceSeries(origin, history, kelvins)
            : throw new ArgumentOutOfRangeException(nameof(maxError), kelvins, "a measured series has no error, a simulated one has an error above zero");
    }
}
