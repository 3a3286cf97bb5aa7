using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>Puts the results of a march together.</summary>
internal static class RunReport
{
    internal static HeatRun Make(ThermalSystem system, TransientEngine engine, RunRecorder recorder, IReadOnlyList<Probe> probes)
    {
        Dictionary<string, TemperatureHistory> histories = new(StringComparer.Ordinal);
        for (int i = 0; i < probes.Count; i++)
        {
            histories[probes[i].Name] = recorder.History(i);
        }

        Dictionary<string, IReadOnlyList<double>> watts = new(StringComparer.Ordinal);
        Dictionary<string, double> joules = new(StringComparer.Ordinal);
        for (int c = 0; c < system.Channels.Count; c++)
        {
            watts[system.Channels[c]] = recorder.Watts(c);
            joules[system.Channels[c]] = engine.Ledger.Joules[c];
        }

        return new HeatRun
        {
            Seconds = recorder.Times(),
            Probes = histories,
            LiquidShare = recorder.LiquidShares(),
            FlowedShare = recorder.FlowedShares(),
            FrontShare = recorder.FrontShares(),
            Watts = watts,
            Energy = new EnergyReport(joules, engine.Ledger.StoredJ, engine.Ledger.BalanceError),
            Mesh = new MeshReport(
                system.Grid.Radial.Count,
                system.Grid.Axial.Count,
                engine.Steps,
                engine.Rejections,
                engine.Solver.Factorisations,
                engine.Solver.Solves,
                null),
            Assumptions = [],
            Caveats = [],
        };
    }
}

/// <summary>The heat balance of a run.</summary>
/// <param name="HeatInJ">Heat into the model by channel over the run [J]; negative when it left.</param>
/// <param name="StoredJ">Rise of the heat held by board, joint, tip and connector [J].</param>
/// <param name="BalanceError">Unexplained difference over the heat that moved; a sound run keeps it below 0.001.</param>
public sealed record EnergyReport(IReadOnlyDictionary<string, double> HeatInJ, double StoredJ, double BalanceError);
