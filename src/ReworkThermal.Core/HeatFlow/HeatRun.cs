using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Readings;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>Results of a heat-flow run. All series share the sample times of <see cref="Seconds"/>.</summary>
public sealed record HeatRun
{
    /// <summary>Sample times from the start of the run [s]: every step and one point within it.</summary>
    public required IReadOnlyList<double> Seconds { get; init; }

    /// <summary>Temperature histories by probe, in the order in which they are shown.</summary>
    public required IReadOnlyDictionary<string, TemperatureHistory> Probes { get; init; }

    /// <summary>Share of the solder that is liquid, 0 to 1, per sample; empty without solder.</summary>
    public required IReadOnlyList<double> LiquidShare { get; init; }

    /// <summary>Share of the solder at or above flow temperature, 0 to 1, per sample; empty without solder.</summary>
    public required IReadOnlyList<double> FlowedShare { get; init; }

    /// <summary>
    /// Share of the barrel's length in which all solder has flow temperature, counted without a gap from the face that is touched first,
    /// 0 to 1, per sample: the melt front. Empty for a joint without a barrel.
    /// </summary>
    public required IReadOnlyList<double> FrontShare { get; init; }

    /// <summary>Heat flow into the model by channel, per sample [W].</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<double>> Watts { get; init; }

    /// <summary>Where the heat came from and where it went.</summary>
    public required EnergyReport Energy { get; init; }

    /// <summary>Mesh and steps.</summary>
    public required MeshReport Mesh { get; init; }

    /// <summary>When the whole joint flowed; null for a posed problem.</summary>
    public FlowReport? Flow { get; init; }

    /// <summary>Neighbours past their limits and near them.</summary>
    public IReadOnlyList<NeighbourReport> Neighbours { get; init; } = [];

    /// <summary>What was assumed, one sentence each.</summary>
    public required IReadOnlyList<string> Assumptions { get; init; }

    /// <summary>What limits the worth of the answer, one sentence each.</summary>
    public required IReadOnlyList<string> Caveats { get; init; }
}
