using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>What one short run showed.</summary>
/// <param name="FlowS">When the coldest solder had flow temperature, from when the touch itself began [s]; null if it did not.</param>
/// <param name="WorkableS">When it had its superheat too [s]; null if it did not.</param>
/// <param name="ColdestC">Hottest that the coldest solder got [°C].</param>
/// <param name="PadPeakC">Hottest that a pad interface got [°C].</param>
internal readonly record struct BriefRun(double? FlowS, double? WorkableS, double ColdestC, double PadPeakC)
{
    /// <summary>Reads a run as far as it got.</summary>
    /// <param name="run">The run.</param>
    /// <param name="flowC">Flow temperature of the solder [°C].</param>
    /// <param name="superheat">How far above it the coldest solder must come to be worked.</param>
    /// <param name="lead">How long air blew before the touch itself.</param>
    internal static BriefRun Of(LiveRun run, double flowC, TemperatureDelta superheat, Duration lead)
    {
        TemperatureHistory coldest = run.History(ProbeNames.ColdestSolder);
        return new BriefRun(
            Since(coldest.FirstAt(flowC)),
            Since(coldest.FirstAt(flowC + superheat.Kelvins)),
            coldest.PeakCelsius,
            Math.Max(run.History(ProbeNames.NearPad).PeakCelsius, run.History(ProbeNames.FarPad).PeakCelsius));

        double? Since(double? seconds) => seconds is { } reached ? Math.Max(0, reached - lead.Seconds) : null;
    }
}
