using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Reports.Plans;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Heating;

/// <summary>Turns heat-flow runs into answers.</summary>
public static class HeatReporting
{
    /// <summary>One run.</summary>
    /// <param name="title">What was run.</param>
    /// <param name="run">Its results.</param>
    /// <param name="notes">What was assumed before, one sentence each.</param>
    /// <param name="sources">Citations of the data used.</param>
    /// <returns>The answer.</returns>
    public static HeatReport Of(string title, HeatRun run, IReadOnlyList<string> notes, IReadOnlyList<string> sources)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(notes);
        return new HeatReport(
            title,
            [.. run.Seconds.Select(s => Duration.FromSeconds(s))],
            [.. run.Probes.Select(p => new ProbeTrace(p.Key, [.. p.Value.Celsius.ToArray().Select(c => Temperature.FromDegreesCelsius(c))]))],
            run.Flow is { } flow ? SolderOf(flow, run) : null,
            [.. run.Energy.HeatInJ.Select(h => new HeatShare(h.Key, Energy.FromJoules(h.Value)))],
            run.Energy.BalanceError,
            new HeatMesh(
                run.Mesh.RadialCells,
                run.Mesh.AxialCells,
                run.Mesh.Steps,
                run.Mesh.ErrorEstimateK is { } error ? TemperatureDelta.FromKelvins(error) : null),
            [.. run.Neighbours.Select(n => new NeighbourLine(n.Name, Temperature.FromDegreesCelsius(n.PeakCelsius), n.LimitCelsius is { } limit ? Temperature.FromDegreesCelsius(limit) : null, n.Warnings))],
            [.. notes.Concat(run.Assumptions).Concat(run.Caveats).Distinct(StringComparer.Ordinal)],
            sources);
    }

    private static SolderTrace SolderOf(FlowReport flow, HeatRun run) => new(
        Temperature.FromDegreesCelsius(flow.FlowCelsius),
        TemperatureDelta.FromKelvins(flow.SuperheatK),
        flow.SecondsToFlow is { } seconds ? Duration.FromSeconds(seconds) : null,
        flow.SecondsToSuperheat is { } warmer ? Duration.FromSeconds(warmer) : null,
        Temperature.FromDegreesCelsius(flow.ColdestPeakCelsius),
        run.LiquidShare,
        run.FlowedShare,
        run.FrontShare);
}
