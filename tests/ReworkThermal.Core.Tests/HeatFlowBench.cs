using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Core.Tools;
using UnitsNet;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests;

/// <summary>A bench of round figures for tests of the heat model: invented, not a product.</summary>
internal static class HeatFlowBench
{
    internal static readonly Provenance Invented = new("judgement, no source", EvidenceMark.Judgement);

    internal static Estimate<T> Exactly<T>(T value)
        where T : struct => new(value, value, value, Invented);

    internal static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    internal static Metal Metal(string name, double k, double density, double heat) => new()
    {
        Name = name,
        Conductivity = Exactly(Conductivity(k)),
        Density = Exactly(KgPerM3(density)),
        SpecificHeat = Exactly(Heat(heat)),
    };

    internal static Laminate Laminate(double rise = 0) => new()
    {
        Name = "epoxy-glass",
        ClassName = "high-tg-lead-free",
        InPlaneConductivity = Exactly(Conductivity(1.059)),
        ThroughConductivity = Exactly(Conductivity(0.343)),
        Density = Exactly(KgPerM3(1850)),
        SpecificHeat = Exactly(Heat(1000)),
        SpecificHeatRise = Exactly(rise),
        GlassTransition = Exactly(Celsius(170)),
        Emissivity = Exactly(0.9),
    };

    /// <summary>Two outer signal layers and planes of 35 µm evenly between them.</summary>
    internal static Board Board(int planes, double thicknessMm = 1.6, double coverage = 1, double rise = 0)
    {
        CopperLayer Layer(string name, CopperKind kind, double share) => new()
        {
            Name = name,
            Kind = kind,
            Thickness = Exactly(Length.FromMicrometers(35)),
            Coverage = Ratio.FromDecimalFractions(share),
        };
        List<CopperLayer> copper =
        [
            Layer("top", CopperKind.Signal, 0.3),
            .. Enumerable.Range(1, planes).Select(i => Layer($"plane {i}", CopperKind.Plane, coverage)),
            Layer("bottom", CopperKind.Signal, 0.3),
        ];
        double gap = (thicknessMm - (0.035 * copper.Count)) / (copper.Count - 1);
        return new Board
        {
            Name = $"{planes} planes",
            Width = Mm(71),
            Depth = Mm(71),
            StackUp = new StackUp(copper, [.. Enumerable.Repeat(Mm(gap), copper.Count - 1)], Mm(thicknessMm)),
            Laminate = Laminate(rise),
            Copper = Metal("copper", 394, 8920, 386),
        };
    }

    internal static ThroughJoint Joint(int planes, PlaneConnection connection, double fillet = 0.2, double legMm = 0.6, Metal? metal = null) => new()
    {
        Name = "test joint",
        Connections =
        [
            new PlaneConnection.Isolated(Mm(2.8)),
            .. Enumerable.Repeat(connection, planes),
            new PlaneConnection.Isolated(Mm(2.8)),
        ],
        Hole = new HoleShape.Round(Mm(1.0)),
        BarrelWall = Exactly(Length.FromMicrometers(25)),
        TopPadDiameter = Mm(2),
        BottomPadDiameter = Mm(2),
        InnerLandDiameter = Mm(1.6),
        TopFilletHeight = Mm(fillet),
        BottomFilletHeight = Mm(fillet),
        Leg = new Leg
        {
            Shape = new LegShape.Round(Mm(legMm)),
            Metal = metal ?? Metal("brass", 115, 8530, 385),
            Protrusion = Mm(fillet),
            StandOff = Mm(fillet),
        },
    };

    internal static PlaneConnection.Relieved FourSpokes() => new(4, Mm(0.25), Mm(0.25));

    /// <summary>Tin-silver-copper in round figures: solidus 217 °C, liquidus 220 °C.</summary>
    internal static EnthalpyCurve LeadFree() => EnthalpyCurve.Melting(
        Celsius(217), Celsius(220), SpecificEnergy.FromKilojoulesPerKilogram(60), Heat(230), Heat(240), KgPerM3(7400), Conductivity(58), Conductivity(30));

    internal static Surroundings Room(double celsius = 25) => new()
    {
        Room = Celsius(celsius),
        TopConvection = Exactly(Coefficient(10)),
        BottomConvection = Exactly(Coefficient(6)),
    };

    internal static TipSource Tip(double celsius = 350, double contact = 15000, double heat = 1000, double watts = 1000, double resistance = 1e-3, double radiusMm = 1) => new()
    {
        Name = "test tip",
        Set = Celsius(celsius),
        PowerLimit = Power.FromWatts(watts),
        HeatCapacity = Entropy.FromJoulesPerKelvin(heat),
        SensorToFaceKelvinPerWatt = resistance,
        Contact = ContactGrowth.Steady(Coefficient(contact)),
        FaceRadius = Mm(radiusMm),
    };

    internal static AirNozzle RoundNozzle() => new()
    {
        Name = "round nozzle, 6 mm",
        Diameter = Mm(6),
        LeastFlow = VolumeFlow.FromLitersPerMinute(5),
        MostFlow = VolumeFlow.FromLitersPerMinute(120),
        MostSetting = Celsius(500),
        ExcessKept = Exactly(0.85),
    };

    internal static JointProblem Problem(Board board, Joint joint, TipSource tip, double seconds, double start = 25) => new()
    {
        Site = new JointSite(board, joint, null, []),
        Solder = LeadFree(),
        FlowTemperature = Celsius(219),
        Superheat = TemperatureDelta.Zero,
        Surroundings = Room(),
        Start = Celsius(start),
        Preheat = null,
        Touches = [new Touch { Start = Duration.Zero, Span = Seconds(seconds), Side = BoardSide.Top, Tip = tip }],
        End = Seconds(seconds),
    };

    internal static HeatRun Run(JointProblem problem, SolverSettings? settings = null) =>
        Assert.IsType<HeatOutcome.Completed>(HeatSolver.Solve(problem, settings)).Run;
}
