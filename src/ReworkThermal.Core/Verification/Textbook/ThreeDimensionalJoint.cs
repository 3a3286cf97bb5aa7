using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Verification.Textbook;

/// <summary>
/// One plated hole with its leg and two planes as the table joint-three-dimensional.csv has it, posed as a joint on its board: the same
/// rings, spokes and films that every answer is computed with. The rim loses heat as the faces do; in the table it is adiabatic (below 0.1 K).
/// </summary>
internal static class ThreeDimensionalJoint
{
    private static readonly Provenance _table = new("joint-three-dimensional.csv", EvidenceMark.Computed);

    /// <summary>How the planes are tied in each case of the table.</summary>
    private static readonly Dictionary<string, PlaneConnection> _ties = new(StringComparer.Ordinal)
    {
        ["one_solid"] = new PlaneConnection.Direct(),
        ["one_relief"] = new PlaneConnection.Relieved(4, Mm(0.25), Mm(0.25)),
    };

    /// <summary>Temperatures of a case at the times of its rows.</summary>
    /// <param name="name">Name of the case.</param>
    /// <param name="places">Time [s] and place of each row, times not falling.</param>
    /// <returns>One temperature a row [°C].</returns>
    internal static IReadOnlyList<double> Figures(string name, IEnumerable<(double Seconds, string Place)> places)
    {
        TipSource tip = new()
        {
            Name = "disc of fixed temperature",
            Set = Celsius(350),
            PowerLimit = Power.FromMegawatts(1),
            HeatCapacity = Entropy.FromKilojoulesPerKelvin(1),
            SensorToFaceKelvinPerWatt = 1e-3,
            Contact = ContactGrowth.Steady(Coefficient(20_000)),
            FaceRadius = Mm(0.9),
        };
        JointRunner runner = new(Problem(_ties[name]), [tip], [], new SolverSettings());
        _ = runner.Begin();
        runner.Put(tip, null, BoardSide.Top);
        List<double> celsius = [];
        foreach ((double seconds, string place) in places)
        {
            celsius.Add(runner.Engine.AdvanceTo(seconds, CancellationToken.None) ? Mean(runner.Bench, place) : double.NaN);
        }

        return celsius;
    }

    private static double Mean(JointBench bench, string place)
    {
        JointMesh mesh = bench.Mesh;
        int last = mesh.Grid.Axial.Count - 1;
        (int from, int to) = place switch
        {
            "far side" => (0, 0),
            "near side" => (last, last),
            _ => (0, last),
        };
        double heat = 0;
        double volume = 0;
        for (int row = from; row <= to; row++)
        {
            (int[] cells, double[] areas) = mesh.Ring(0, mesh.Geometry.BarrelOuter, row);
            for (int i = 0; i < cells.Length; i++)
            {
                double share = areas[i] * mesh.Grid.Axial.Width(row);
                volume += share;
                heat += share * bench.System.CellTemperaturesK[cells[i]];
            }
        }

        return (heat / volume) - 273.15;
    }

    private static JointProblem Problem(PlaneConnection tie)
    {
        PlaneConnection outside = new PlaneConnection.Isolated(Mm(2.8));
        ThroughJoint joint = new()
        {
            Name = "joint of the table",
            Connections = [outside, tie, tie, outside],
            Hole = new HoleShape.Round(Mm(0.95)),
            BarrelWall = Exactly(Length.FromMicrometers(25)),
            TopPadDiameter = Mm(1.8),
            BottomPadDiameter = Mm(1.8),
            InnerLandDiameter = Mm(1.8),
            TopFilletHeight = Length.Zero,
            BottomFilletHeight = Length.Zero,
            Leg = new Leg
            {
                Shape = new LegShape.Round(Mm(0.6)),
                Metal = Metal("leg", 120, 8500, 380),
                Protrusion = Length.Zero,
                StandOff = Length.Zero,
            },
        };
        return new JointProblem
        {
            Site = new JointSite(Board(), joint, null, []),
            Solder = Solder(),
            FlowTemperature = Celsius(400),
            Superheat = TemperatureDelta.Zero,
            Surroundings = new Surroundings { Room = Celsius(25), TopConvection = Exactly(Coefficient(12)), BottomConvection = Exactly(Coefficient(12)) },
            Start = Celsius(25),
            Preheat = null,
            Touches = [],
            End = Seconds(10),
        };
    }

    private static Board Board()
    {
        CopperLayer Layer(string name, CopperKind kind, double thicknessUm, double share) => new()
        {
            Name = name,
            Kind = kind,
            Thickness = Exactly(Length.FromMicrometers(thicknessUm)),
            Coverage = Ratio.FromDecimalFractions(share),
        };
        return new Board
        {
            Name = "board of the table",
            Width = Mm(60),
            Depth = Mm(60),
            StackUp = new StackUp(
                [
                    Layer("top", CopperKind.Signal, 40, 0),
                    Layer("upper plane", CopperKind.Plane, 30, 1),
                    Layer("lower plane", CopperKind.Plane, 30, 1),
                    Layer("bottom", CopperKind.Signal, 40, 0),
                ],
                [Mm(0.46), Mm(0.54), Mm(0.46)],
                Mm(1.6)),
            Laminate = new Laminate
            {
                Name = "laminate of the table",
                ClassName = "A",
                InPlaneConductivity = Exactly(Conductivity(0.8)),
                ThroughConductivity = Exactly(Conductivity(0.3)),
                Density = Exactly(KgPerM3(1850)),
                SpecificHeat = Exactly(Heat(1100)),
                SpecificHeatRise = Exactly(0.0),
                GlassTransition = Exactly(Celsius(170)),
                Emissivity = Exactly(0.0),
            },
            Copper = Metal("copper", 390, 8940, 385),
        };
    }

    // Nothing melts below the tip's temperature.
    private static EnthalpyCurve Solder() => EnthalpyCurve.Melting(
        Celsius(400), Celsius(401), SpecificEnergy.FromKilojoulesPerKilogram(60), Heat(230), Heat(230), KgPerM3(7400), Conductivity(58), Conductivity(58));

    private static Metal Metal(string name, double conductivity, double density, double heat) => new()
    {
        Name = name,
        Conductivity = Exactly(Conductivity(conductivity)),
        Density = Exactly(KgPerM3(density)),
        SpecificHeat = Exactly(Heat(heat)),
    };

    private static Estimate<T> Exactly<T>(T value)
        where T : struct => new(value, value, value, _table);

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
