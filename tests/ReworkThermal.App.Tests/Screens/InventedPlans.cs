using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;
using UnitsNet;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>A plan answer for tests of the screens; every figure is invented.</summary>
internal static class InventedPlans
{
    internal static PlanReport Report { get; } = new(
        "invented title",
        "invented joint",
        [Line("smallest budget", null, 340), Line("coolest pad", "Bi58Sn42", 300)],
        NoPlanReason: null,
        [new RuledOut("invented alloy", "invented reason")],
        ["invented basis"],
        ["invented assumption"],
        []);

    /// <summary>The same with a spread.</summary>
    internal static PlanReport Sampled { get; } = Report with
    {
        Plans =
        [
            .. Report.Plans.Select(p => p with
            {
                TimeToFlowSpread = new TimeSpread(
                    Duration.FromSeconds(2.1), Duration.FromSeconds(3.2), null, Duration.FromSeconds(9), 200, 150, 3,
                    [new InfluenceLine("invented input", 0.6, "invented advice", "invented source")], 0.9),
            }),
        ],
    };

    private static PlanLine Line(string kind, string? alloy, double ironC)
    {
        TouchLine touch = new(
            "heavy chisel",
            Temperature.FromDegreesCelsius(ironC),
            Air: null,
            Preheater: null,
            Temperature.FromDegreesCelsius(23),
            Duration.FromSeconds(3),
            Duration.FromSeconds(4),
            Duration.FromSeconds(6),
            "invented stop",
            Temperature.FromDegreesCelsius(280));
        return new PlanLine(
            kind,
            alloy,
            0.3,
            Mass.FromMilligrams(5),
            Length.FromMillimeters(2),
            Temperature.FromDegreesCelsius(185),
            TemperatureDelta.FromKelvins(4),
            touch,
            touch,
            Passes: 3,
            new FinalJointLine(MassFractions.Of((Element.Sn, 1)), Temperature.FromDegreesCelsius(200), Temperature.FromDegreesCelsius(180), 0, 0, IsClean: true),
            new Spread(0.1, 0.2, 0.4),
            new Spread(0.2, 0.3, 0.5),
            new Spread(0.3, 0.5, 0.9),
            new Spread(0.01, 0.02, 0.05),
            [],
            "invented gauge governs",
            "invented limit",
            TimeToFlowSpread: null,
            [],
            []);
    }
}
