using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>
/// What matters of one simulated touch: the coldest solder, the hotter of the two pad interfaces, and the laminate's damage sum so far.
/// </summary>
internal sealed class TouchCourse
{
    private readonly double[] _seconds;
    private readonly double[] _coldestC;
    private readonly double[] _padC;
    private readonly double[] _laminate;

    private readonly IReadOnlyList<Neighbour> _parts;

    /// <summary>Reads a run.</summary>
    /// <param name="run">The run, with the probes of a joint.</param>
    /// <param name="lead">How long air blew before the touch itself began: times count from there.</param>
    /// <param name="kinetics">How the laminate ages.</param>
    /// <param name="parts">Parts near the joint that were followed.</param>
    internal TouchCourse(HeatRun run, Duration lead, LaminateKinetics kinetics, IReadOnlyList<Neighbour> parts)
    {
        _parts = parts;
        Run = run;
        TemperatureHistory coldest = run.Probes[ProbeNames.ColdestSolder];
        TemperatureHistory near = run.Probes[ProbeNames.NearPad];
        TemperatureHistory far = run.Probes[ProbeNames.FarPad];
        _seconds = [.. coldest.Seconds.ToArray().Select(t => t - lead.Seconds)];
        _coldestC = coldest.Celsius.ToArray();
        _padC = new double[_seconds.Length];
        for (int i = 0; i < _padC.Length; i++)
        {
            _padC[i] = Math.Max(near.Celsius[i], far.Celsius[i]);
        }

        _laminate = LaminateSums(kinetics);
    }

    /// <summary>The whole run.</summary>
    internal HeatRun Run { get; }

    /// <summary>Board temperature before the touch [°C].</summary>
    internal double BoardStartC => Run.Probes[ProbeNames.Board].Celsius[0];

    /// <summary>The hotter pad interface at each sample, as a history.</summary>
    internal TemperatureHistory Pad => new(_seconds, _padC);

    /// <summary>First time of the touch itself at which the coldest solder has reached a temperature [s]; null if never.</summary>
    internal double? SecondsUntilColdest(double celsius) => FirstCrossing(_coldestC, celsius) is { } seconds ? Math.Max(0, seconds) : null;

    /// <summary>First time at which a pad interface reaches a temperature [s], below zero when the air alone got it there; null if never.</summary>
    internal double? SecondsUntilPad(double celsius) => FirstCrossing(_padC, celsius);

    /// <summary>First time at which the laminate sum of this touch reaches a value [s], below zero when the air alone got it there; null if never.</summary>
    internal double? SecondsUntilLaminate(double sum) => FirstCrossing(_laminate, sum);

    /// <summary>The first part near the joint to reach the highest temperature it bears, and when [s], below zero when the air alone got it there; null when none does.</summary>
    internal (double Seconds, Neighbour Part)? FirstPartAtItsLimit()
    {
        (double Seconds, Neighbour Part)? first = null;
        foreach (Neighbour part in _parts)
        {
            if (part.MostTemperature is { } most
                && FirstCrossing(Run.Probes[ProbeNames.Neighbour(part.Name)].Celsius, most.Central.DegreesCelsius) is { } seconds
                && (first is null || seconds < first.Value.Seconds))
            {
                first = (seconds, part);
            }
        }

        return first;
    }

    /// <summary>Laminate damage sum of this touch up to a time, central [1].</summary>
    internal double LaminateAt(double seconds) => ValueAt(_laminate, seconds);

    /// <summary>Coldest solder at a time [°C].</summary>
    internal double ColdestAt(double seconds) => ValueAt(_coldestC, seconds);

    /// <summary>Hotter pad interface at a time [°C].</summary>
    internal double PadAt(double seconds) => ValueAt(_padC, seconds);

    private double[] LaminateSums(LaminateKinetics kinetics)
    {
        double[] sums = new double[_seconds.Length];
        for (int i = 1; i < sums.Length; i++)
        {
            TemperatureHistory step = new(_seconds.AsSpan(i - 1, 2), _padC.AsSpan(i - 1, 2));
            sums[i] = sums[i - 1] + kinetics.Spent(step).CentralEnergy;
        }

        return sums;
    }

    private double? FirstCrossing(ReadOnlySpan<double> values, double level)
    {
        if (values[0] >= level)
        {
            return _seconds[0];
        }

        for (int i = 1; i < values.Length; i++)
        {
            if (values[i] >= level)
            {
                double share = (level - values[i - 1]) / (values[i] - values[i - 1]);
                return _seconds[i - 1] + (share * (_seconds[i] - _seconds[i - 1]));
            }
        }

        return null;
    }

    private double ValueAt(double[] values, double seconds)
    {
        int index = Array.BinarySearch(_seconds, seconds);
        if (index >= 0)
        {
            return values[index];
        }

        int upper = ~index;
        if (upper == 0 || upper == values.Length)
        {
            return upper == 0 ? values[0] : values[^1];
        }

        double share = (seconds - _seconds[upper - 1]) / (_seconds[upper] - _seconds[upper - 1]);
        return values[upper - 1] + (share * (values[upper] - values[upper - 1]));
    }
}

/// <summary>When a touch must end at the latest.</summary>
/// <param name="Seconds">Time from its start [s].</param>
/// <param name="Reason">What sets it.</param>
/// <param name="Part">The part that reaches its limit; null when another limit comes first.</param>
internal readonly record struct TouchEnd(double Seconds, StopReason Reason, Neighbour? Part = null);
