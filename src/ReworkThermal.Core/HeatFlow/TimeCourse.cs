using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A temperature that is imposed from outside, against time from the start of the run.</summary>
public abstract record TimeCourse
{
    private TimeCourse()
    {
    }

    /// <summary>The temperature at a time.</summary>
    /// <param name="seconds">Time from the start of the run [s].</param>
    /// <returns>Temperature [K].</returns>
    internal abstract double KelvinAt(double seconds);

    /// <summary>The same temperature at all times.</summary>
    /// <param name="Value">The temperature.</param>
    public sealed record Constant(Temperature Value) : TimeCourse
    {
        private readonly double _kelvin = Value.Kelvins;

        internal override double KelvinAt(double seconds) => _kelvin;
    }

    /// <summary>A straight climb or fall from one temperature to another, then steady.</summary>
    /// <param name="From">Temperature at <paramref name="Start"/> and before.</param>
    /// <param name="To">Temperature at the end.</param>
    /// <param name="Rate">Size of the rate of change, above zero.</param>
    /// <param name="Start">When it begins.</param>
    public sealed record Ramp(Temperature From, Temperature To, TemperatureChangeRate Rate, Duration Start) : TimeCourse
    {
        internal override double KelvinAt(double seconds)
        {
            double change = Rate.DegreesCelsiusPerSecond * Math.Max(0, seconds - Start.Seconds);
            double from = From.Kelvins;
            double to = To.Kelvins;
            return to >= from ? Math.Min(to, from + change) : Math.Max(to, from - change);
        }
    }

    /// <summary>A sine about a mean: mean + amplitude sin(2 pi t / period).</summary>
    /// <param name="Mean">Mean temperature.</param>
    /// <param name="Amplitude">Amplitude.</param>
    /// <param name="Period">Period, above zero.</param>
    public sealed record Sine(Temperature Mean, TemperatureDelta Amplitude, Duration Period) : TimeCourse
    {
        internal override double KelvinAt(double seconds) =>
            Mean.Kelvins + (Amplitude.Kelvins * Math.Sin(2 * Math.PI * seconds / Period.Seconds));
    }
}
