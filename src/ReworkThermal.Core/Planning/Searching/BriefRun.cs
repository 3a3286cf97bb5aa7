using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>What one short run showed.</summary>
/// <param name="FlowS">When the coldest solder had reached the wanted temperature, from when the touch itself began [s]; null if it did not.</param>
/// <param name="ColdestC">Hottest that the coldest solder got [°C].</param>
/// <param name="PadPeakC">Hottest that a pad interface got [°C].</param>
internal readonly record struct BriefRun(double? FlowS, double ColdestC, double PadPeakC)
{
    /// <summary>Reads a run as far as it got.</summary>
    /// <param name="run">The run.</param>
    /// <param name="neededC">The wanted temperature [°C].</param>
    /// <param name="lead">How long air blew before the touch itself.</param>
    internal static BriefRun Of(LiveRun run, double neededC, Duration lead)
    {
        TemperatureHistory coldest = run.History(ProbeNames.ColdestSolder);
        return new BriefRun(
            coldest.FirstAt(neededC) is { } flows ? Math.Max(0, flows - lead.Seconds) : null,
            coldest.PeakCelsius,
            Math.Max(run.History(ProbeNames.NearPad).PeakCelsius, run.History(ProbeNames.FarPad).PeakCelsius));
    }
}
