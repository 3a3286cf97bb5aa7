using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>Keeps probe temperatures, liquid shares and heat flows of the accepted stages of a run.</summary>
internal sealed class RunRecorder : IStageObserver
{
    private readonly ThermalSystem _system;
    private readonly IReadOnlyList<Probe> _probes;
    private readonly SolderWatch? _solder;
    private readonly List<double[]> _rows = [];
    private readonly List<double[]> _pending = [];

    internal RunRecorder(ThermalSystem system, IReadOnlyList<Probe> probes, SolderWatch? solder)
    {
        _system = system;
        _probes = probes;
        _solder = solder;
    }

    /// <summary>Heat flows at the state being taken, by channel [W].</summary>
    internal double[]? ChannelWatts { get; set; }

    /// <inheritdoc/>
    public void Take(double seconds, ReadOnlySpan<double> bodyK)
    {
        double[] row = new double[1 + _probes.Count + 3 + _system.Channels.Count];
        row[0] = seconds;
        for (int i = 0; i < _probes.Count; i++)
        {
            row[1 + i] = _probes[i].Read(_system, bodyK);
        }

        if (_solder is not null)
        {
            row[1 + _probes.Count] = _solder.LiquidShare(_system);
            row[2 + _probes.Count] = _solder.FlowedShare(_system);
            row[3 + _probes.Count] = _solder.FrontShare(_system);
        }

        for (int c = 0; c < _system.Channels.Count && ChannelWatts is not null; c++)
        {
            row[4 + _probes.Count + c] = ChannelWatts[c];
        }

        _pending.Add(row);
    }

    /// <inheritdoc/>
    public void Commit()
    {
        _rows.AddRange(_pending);
        _pending.Clear();
    }

    /// <inheritdoc/>
    public void Discard() => _pending.Clear();

    /// <summary>Sample times [s].</summary>
    internal double[] Times() => Column(0);

    /// <summary>History of a probe.</summary>
    internal TemperatureHistory History(int probe)
    {
        double[] celsius = Column(1 + probe);
        for (int i = 0; i < celsius.Length; i++)
        {
            celsius[i] -= 273.15;
        }

        return new TemperatureHistory(Times(), celsius);
    }

    /// <summary>Mass share of the solder that is liquid, per sample.</summary>
    internal double[] LiquidShares() => Column(1 + _probes.Count);

    /// <summary>Share of the solder at or above flow temperature, per sample.</summary>
    internal double[] FlowedShares() => Column(2 + _probes.Count);

    /// <summary>Share of the barrel's length that has flowed from the touched face on, per sample.</summary>
    internal double[] FrontShares() => Column(3 + _probes.Count);

    /// <summary>Heat flow of a channel, per sample [W].</summary>
    internal double[] Watts(int channel) => Column(4 + _probes.Count + channel);

    /// <summary>Share of the solder that is liquid at the latest sample.</summary>
    internal double LatestLiquidShare => _rows[^1][1 + _probes.Count];

    /// <summary>Latest value of a probe [K].</summary>
    internal double Latest(int probe) => _rows[^1][1 + probe];

    private double[] Column(int column) => [.. _rows.Select(r => column < r.Length ? r[column] : 0)];
}
