using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Reports.Heating;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;
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
        TemperatureDelta.Zero,
        ["An invented reason."],
        ["An invented note that is long enough to run over the end of a line of one hundred columns, so that wrapping shows."],
        ["Nobody, Nowhere, Never (0000)"]);

    internal static MeltReport.NotConverged MeltNotConverged => new(Solder, "an invented reason", [], []);

    internal static PlanReport Plan => new(
        "An invented job",
        "an anchor on a board",
        [
            new PlanLine(
                "no lead",
                "Bi58Sn42",
                0.4,
                Mass.FromMilligrams(6.4),
                Length.FromMillimeters(1.8),
                Temperature.FromDegreesCelsius(190),
                TemperatureDelta.FromKelvins(5),
                Touch(350, "hot plate", 120),
                Touch(380, null, 23),
                3,
                new FinalJointLine(Solder, Temperature.FromDegreesCelsius(215), Temperature.FromDegreesCelsius(138), 0, 0.0008, true),
                new Spread(0.1, 0.2, 0.4),
                new Spread(0.2, 0.3, 0.5),
                new Spread(0.3, 0.5, 0.9),
                new Spread(0.01, 0.02, 0.09),
                [new GaugeLine("laminate", new Spread(0, 0.01, 0.02), new Spread(0.01, 0.03, 0.11), "form only", "An invented reason.")],
                "an invented gauge governs",
                "an invented limit",
                null,
                [new Core.Planning.Pads.NeighbourStrain("C1", Core.Planning.Pads.NeighbourStrainKind.Rate, 5, 2, 4, "K/s")],
                ["An invented caution."]),
        ],
        null,
        [new RuledOut("Sn63Pb37", "an invented reason")],
        ["An invented basis."],
        ["An invented note."],
        ["Nobody, Nowhere, Never (0000)"]);

    internal static PlanReport NoPlan => new("An invented job", "an anchor on a board", [], "an invented reason", [new RuledOut("everything", "an invented reason")], [], [], []);

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
            Duration.FromSeconds(3.5),
            Duration.FromSeconds(4.25),
            Temperature.FromDegreesCelsius(195),
            [.. Enumerable.Range(0, 41).Select(i => Math.Min(1, i / 16.0))],
            [.. Enumerable.Range(0, 41).Select(i => Math.Min(1, i / 17.0))],
            [.. Enumerable.Range(0, 41).Select(i => Math.Min(1, i / 20.0))]),
        [new HeatShare("iron", Energy.FromJoules(55.125)), new HeatShare("top_face", Energy.FromJoules(-2))],
        0.00012,
        new HeatMesh(40, 26, 39, TemperatureDelta.FromKelvins(0.25)),
        [new NeighbourLine("C1", Temperature.FromDegreesCelsius(88), null, []), new NeighbourLine("C2", Temperature.FromDegreesCelsius(130), Temperature.FromDegreesCelsius(125), ["an invented warning"])],
        ["An invented note."],
        ["Nobody, Nowhere, Never (0000)"]);

    private static TouchLine Touch(double set, string? preheater, double board) => new(
        "medium chisel",
        Temperature.FromDegreesCelsius(set),
        null,
        preheater,
        Temperature.FromDegreesCelsius(board),
        Duration.FromSeconds(3.25),
        Duration.FromSeconds(5.25),
        Duration.FromSeconds(10),
        "longest touch",
        Temperature.FromDegreesCelsius(255));
}
