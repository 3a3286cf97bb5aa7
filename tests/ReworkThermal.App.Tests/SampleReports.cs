using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Reports;
using UnitsNet;

namespace ReworkThermal.App.Tests;

/// <summary>Invented answers, only to test how answers look. No figure here means anything.</summary>
internal static class SampleReports
{
    internal static MassFractions Solder => MassFractions.Of((Element.Sn, 96.5), (Element.Ag, 3), (Element.Cu, 0.5));

    internal static MeltReport.Computed Melt => new(
        Solder,
        Temperature.FromDegreesCelsius(210.04),
        Temperature.FromDegreesCelsius(220.06),
        Temperature.FromDegreesCelsius(215),
        Temperature.FromDegreesCelsius(209),
        0.00042,
        SpecificEnergy.FromKilojoulesPerKilogram(60.25),
        Density.FromKilogramsPerCubicMeter(7400.4),
        [
            new PhaseLine("BCT_A5", "tin-rich solid", Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(216), 0.95),
            new PhaseLine("LIQUID", "liquid", Temperature.FromDegreesCelsius(210), Temperature.FromDegreesCelsius(250), 1),
        ],
        TemperatureDelta.FromKelvins(5),
        ["An invented reason."],
        ["An invented note that is long enough to run over the end of a line of one hundred columns, so that wrapping shows."],
        ["Nobody, Nowhere, Never (0000)"]);

    internal static MeltReport.NotConverged MeltNotConverged => new(Solder, "an invented reason", [], []);

    internal static HeatReport Heat => new(
        "An invented run",
        [.. Enumerable.Range(0, 41).Select(i => Duration.FromSeconds(i * 0.25))],
        [
            new ProbeTrace("tip", [.. Enumerable.Range(0, 41).Select(i => Temperature.FromDegreesCelsius(350 - (60 * Math.Exp(-i / 8.0))))]),
            new ProbeTrace("near_pad", [.. Enumerable.Range(0, 41).Select(i => Temperature.FromDegreesCelsius(240 - (215 * Math.Exp(-i / 10.0))))]),
            new ProbeTrace("far_pad", [.. Enumerable.Range(0, 41).Select(i => Temperature.FromDegreesCelsius(200 - (175 * Math.Exp(-i / 14.0))))]),
        ],
        new SolderTrace(
            Temperature.FromDegreesCelsius(178),
            TemperatureDelta.FromKelvins(15),
            Duration.FromSeconds(4.25),
            Temperature.FromDegreesCelsius(195),
            [.. Enumerable.Range(0, 41).Select(i => Math.Min(1, i / 16.0))]),
        [new HeatShare("iron", Energy.FromJoules(55.125)), new HeatShare("top_face", Energy.FromJoules(-2))],
        0.00012,
        [new NeighbourLine("C1", Temperature.FromDegreesCelsius(88), []), new NeighbourLine("C2", Temperature.FromDegreesCelsius(130), ["an invented warning"])],
        ["An invented note."],
        ["Nobody, Nowhere, Never (0000)"]);
}
