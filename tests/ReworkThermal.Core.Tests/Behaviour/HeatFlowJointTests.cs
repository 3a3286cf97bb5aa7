using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data;
using ReworkThermal.Data.Profiles;
using UnitsNet;
using Xunit.Abstractions;
using static ReworkThermal.Core.Tests.HeatFlowBench;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.Behaviour;

public sealed class HeatFlowJointTests(ITestOutputHelper output)
{
    private static readonly Preheater _plate = new()
    {
        Name = "plate",
        Kind = PreheaterKind.HotPlate,
        Width = Mm(200),
        Depth = Mm(200),
        Gap = Length.Zero,
        MostSetting = Celsius(250),
        Coefficient = Exactly(Coefficient(60)),
        FaceEmissivity = null,
        RampLimit = Exactly(TemperatureChangeRate.FromDegreesCelsiusPerSecond(2)),
    };

    private static readonly Preheater _emitter = _plate with
    {
        Name = "emitter",
        Kind = PreheaterKind.Infrared,
        Gap = Mm(20),
        MostSetting = Celsius(500),
        Coefficient = null,
        FaceEmissivity = Exactly(0.9),
    };

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_settled_preheater_brings_the_board_to_the_wanted_temperature(bool infrared)
    {
        Board board = Board(2);
        PreheatSetting setting = new(infrared ? _emitter : _plate, board, Room());
        BottomHeat heat = Assert.IsType<SettingOutcome<BottomHeat>.Ready>(setting.ToBoardTemperature(Celsius(120))).Source;
        JointProblem problem = Problem(board, Joint(2, FourSpokes()), Tip(), 1) with { Preheat = heat };
        HeatRun run = Run(problem);

        // The rim loses a little more than the middle, which the one-dimensional balance leaves out.
        output.WriteLine($"{string.Join(" ", heat.Assumptions)} board {run.Probes[ProbeNames.Board].At(0):0.0} °C");
        Assert.InRange(run.Probes[ProbeNames.Board].At(0), 115, 121);
    }

    /// <summary>
    /// Two open hot-plate projects (seen): a board that lies flat is 25 K, and as much as 20 K, below the plate at 150 to 200 °C. A board
    /// held off by its solder ends is further below.
    /// </summary>
    [Theory]
    [InlineData(133)]
    [InlineData(155)]
    [InlineData(176)]
    public void A_board_that_lies_flat_is_as_far_below_the_plate_as_was_seen(double boardC)
    {
        ProfileLibrary profiles = ProfileLibrary.Load(DataRoot.BesideProgram);
        double Below(string plate)
        {
            PreheatSetting setting = new(profiles.Preheaters[plate], Board(2), profiles.Rooms["still-air"]);
            SettingOutcome<BottomHeat> outcome = setting.ToBoardTemperature(Celsius(boardC));
            return outcome is SettingOutcome<BottomHeat>.Ready ready && ready.Source.Conditions[0] is FaceCondition.Convection { Gas: TimeCourse.Constant heater }
                ? heater.Value.DegreesCelsius - boardC
                : double.PositiveInfinity;
        }

        output.WriteLine($"board {boardC:0} °C: plate {Below("hot-plate-flat"):0.0} K above, held off {Below("hot-plate"):0.0} K");
        Assert.InRange(Below("hot-plate-flat"), 15, 25);
        Assert.True(Below("hot-plate") > Below("hot-plate-flat") + 20);
    }

    [Fact]
    public void A_preheater_switched_on_cold_heats_no_faster_than_its_ramp_limit()
    {
        Board board = Board(2);
        BottomHeat heat = Assert.IsType<SettingOutcome<BottomHeat>.Ready>(new PreheatSetting(_plate, board, Room()).FromCold(Celsius(150), Celsius(25))).Source;
        JointProblem problem = Problem(board, Joint(2, FourSpokes()), Tip(), 1) with { Preheat = heat, Touches = [], End = Seconds(300) };
        TemperatureHistory history = Run(problem).Probes[ProbeNames.Board];
        double fastest = 0;
        for (int i = 1; i < history.Seconds.Length; i++)
        {
            fastest = Math.Max(fastest, (history.Celsius[i] - history.Celsius[i - 1]) / (history.Seconds[i] - history.Seconds[i - 1]));
        }

        output.WriteLine($"fastest {fastest:0.00} K/s, after 300 s {history.At(300):0.0} °C");
        Assert.InRange(fastest, 0.3, 2.01);
        Assert.InRange(history.At(300), 100, 150);
    }

    [Fact]
    public void A_preheater_that_cannot_do_it_says_so()
    {
        SettingOutcome<BottomHeat> outcome = new PreheatSetting(_plate, Board(2), Room()).ToBoardTemperature(Celsius(240));

        Assert.Contains("above its limit of 250 °C", Assert.IsType<SettingOutcome<BottomHeat>.Refused>(outcome).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_surface_terminal_with_vias_is_harder_to_melt_than_one_without()
    {
        SurfaceJoint Terminal(int vias) => new()
        {
            Name = "terminal",
            Connections = [new PlaneConnection.Relieved(1, Mm(1), Mm(2)), new PlaneConnection.Direct(), new PlaneConnection.Direct(), new PlaneConnection.Isolated(Mm(4))],
            PadLength = Mm(3),
            PadWidth = Mm(1.8),
            SolderThickness = Mm(0.12),
            FootThickness = Mm(0.3),
            FootMetal = Metal("brass", 115, 8530, 385),
            Vias = vias,
            ViaDiameter = Mm(0.3),
            ViaWall = Exactly(Length.FromMicrometers(22)),
        };
        HeatRun bare = Run(Problem(Board(2), Terminal(0), Tip(contact: 20000), 6));
        HeatRun tied = Run(Problem(Board(2), Terminal(6), Tip(contact: 20000), 6));

        output.WriteLine($"without vias {bare.Flow}, with {tied.Flow}");
        Assert.True(bare.Flow!.ColdestPeakCelsius > tied.Flow!.ColdestPeakCelsius + 5);
        Assert.False(bare.Probes.ContainsKey(ProbeNames.FarPad));
        Assert.InRange(tied.Energy.BalanceError, 0, 1e-3);
    }

    [Fact]
    public void A_connector_shell_draws_heat_through_the_leg()
    {
        Connector shell = new()
        {
            Name = "shell",
            HeatCapacity = Exactly(Entropy.FromJoulesPerKelvin(2)),
            LegPath = new LegPath.Stated(Exactly(0.05)),
            Surface = Area.FromSquareCentimeters(8),
            Loss = Exactly(Coefficient(15)),
            PlasticLimit = null,
        };
        JointProblem without = Problem(Board(1), Joint(1, FourSpokes()), Tip(), 10);
        JointProblem with = without with { Site = new JointSite(without.Site.Board, without.Site.Joint, shell, []) };
        HeatRun run = Run(with);

        Assert.True(run.Probes[ProbeNames.FarPad].At(10) < Run(without).Probes[ProbeNames.FarPad].At(10) - 5);
        Assert.InRange(run.Probes[ProbeNames.Connector].At(10), 30, 150);
        Assert.InRange(run.Energy.BalanceError, 0, 1e-3);
    }

    [Fact]
    public void A_neighbour_past_its_limit_is_flagged()
    {
        Neighbour Part(string name, double distance) => new()
        {
            Name = name,
            Kind = NeighbourKind.CeramicCapacitor,
            Distance = Mm(distance),
            Extent = Mm(2),
            Side = BoardSide.Top,
            MostTemperature = Exactly(Celsius(60)),
            MostDifference = Exactly(TemperatureDelta.FromKelvins(15)),
            MostRate = Exactly(TemperatureChangeRate.FromDegreesCelsiusPerSecond(4)),
        };
        JointProblem plain = Problem(Board(2), Joint(2, FourSpokes()), Tip(contact: 40000), 10);
        JointProblem problem = plain with { Site = new JointSite(plain.Site.Board, plain.Site.Joint, null, [Part("near", 2.5), Part("far", 30)]) };
        HeatRun run = Run(problem);

        Assert.Equal(3, run.Neighbours[0].Warnings.Count);
        Assert.Empty(run.Neighbours[1].Warnings);
        Assert.StartsWith("near reaches", run.Neighbours[0].Warnings[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_mesh_error_is_stated_when_asked_for_and_small()
    {
        HeatRun run = Run(Problem(Board(2), Joint(2, FourSpokes()), Tip(), 5), new SolverSettings { EstimateMeshError = true });

        output.WriteLine($"mesh {run.Mesh.RadialCells} x {run.Mesh.AxialCells}, estimated error {run.Mesh.ErrorEstimateK:0.00} K");
        Assert.NotNull(run.Mesh.ErrorEstimateK);
        Assert.InRange(run.Mesh.ErrorEstimateK.Value, 0, 3);
    }

    [Fact]
    public void Spokes_conduct_like_their_formula()
    {
        // n k t w / (L + mouths): four spokes of 0.25 mm x 0.25 mm on 35 um of copper (394 W/mK) have 55 mW/K between their mouths.
        ThermalMaterial copper = ThermalMaterial.Of(Metal("copper", 394, 8920, 386));
        ThermalMaterial glass = ThermalMaterial.Of(Laminate());
        const double land = 0.8e-3;
        ThermalMaterial ring = JointFilling.Spokes(FourSpokes(), land, copper, glass);
        double conductance = 2 * Math.PI * ring.RadialConductivity * 35e-6 / Math.Log((land + 0.25e-3) / land);

        double lengths = ReliefSpokes.EffectiveLengthM(4, 0.25e-3, 0.25e-3, land) / 0.25e-3;
        Assert.Equal(4 * 394 * 35e-6 / lengths, conductance, 0.055 / lengths * 0.03);
    }

    /// <summary>
    /// By hand: a pin of 0.64 mm square (round of 0.722 mm) over 2.5 mm in 0.9 mm of plastic of 0.30 W/mK gives 2 pi 0.3 2.5e-3 /
    /// ln(1 + 1.8/0.722) = 3.768 mW/K; 4 mm of brass (115 W/mK) of 0.8 x 0.5 mm give 11.5 mW/K.
    /// </summary>
    [Fact]
    public void A_path_from_leg_to_body_follows_from_its_geometry()
    {
        Leg pin = new() { Shape = new LegShape.Rectangular(Mm(0.64), Mm(0.64)), Metal = Metal("brass", 115, 8530, 385), Protrusion = Length.Zero, StandOff = Length.Zero };
        LegPath plastic = new LegPath.Plastic(Exactly(Conductivity(0.30)), Exactly(Mm(2.5)), Exactly(Mm(0.9)));
        LegPath metal = new LegPath.Metal(Exactly(Mm(4)));

        Assert.Equal(3.768e-3, plastic.Conductance(pin).Central, 2e-6);
        Assert.Equal(11.5e-3, metal.Conductance(pin with { Shape = new LegShape.Rectangular(Mm(0.8), Mm(0.5)) }).Central, 1e-6);
    }

    /// <summary>Metal behind the leg is heated with it: 8 mm of pin stretch the time to flow, and never the other way.</summary>
    [Fact]
    public void Metal_behind_the_leg_stretches_the_time_to_flow()
    {
        double FlowsWith(double behindMm)
        {
            Connector body = new()
            {
                Name = "body",
                HeatCapacity = Exactly(Entropy.FromJoulesPerKelvin(0.4)),
                LegPath = new LegPath.Stated(Exactly(0.004)),
                MetalBehind = Mm(behindMm),
                Surface = Area.FromSquareCentimeters(3),
                Loss = Exactly(Coefficient(15)),
                PlasticLimit = null,
            };
            JointProblem bare = Problem(Board(0), Joint(0, FourSpokes()), Tip(350, contact: 15000), 20);
            HeatRun run = Run(bare with { Site = new JointSite(bare.Site.Board, bare.Site.Joint, body, []) });
            Assert.InRange(Math.Abs(run.Energy.BalanceError), 0, 1e-5);
            return run.Flow!.SecondsToFlow!.Value;
        }

        output.WriteLine($"{FlowsWith(0):0.00} s without, {FlowsWith(8):0.00} s with 8 mm of pin behind the board");
        Assert.InRange(FlowsWith(8) / FlowsWith(0), 1.1, 2);
    }

    [Fact]
    public void A_relieved_plane_draws_less_than_a_direct_and_more_than_an_isolated_one()
    {
        double Far(PlaneConnection connection) => Run(Problem(Board(1), Joint(1, connection), Tip(), 5)).Probes[ProbeNames.FarPad].At(5);
        double direct = Far(new PlaneConnection.Direct());
        double spokes = Far(FourSpokes());
        double isolated = Far(new PlaneConnection.Isolated(Mm(2)));

        output.WriteLine($"far pad: direct {direct:0}, four spokes {spokes:0}, isolated {isolated:0} °C");
        Assert.True(direct < spokes - 5);
        Assert.True(spokes < isolated - 20);
    }

    [Theory]
    [InlineData("negative start")]
    [InlineData("overlap")]
    [InlineData("past end")]
    [InlineData("no tool")]
    [InlineData("no end")]
    public void Impossible_times_are_refused_with_a_sentence(string what)
    {
        JointProblem good = Problem(Board(1), Joint(1, FourSpokes()), Tip(), 5);
        Touch touch = good.Touches[0];
        JointProblem bad = what switch
        {
            "negative start" => good with { Touches = [touch with { Start = Seconds(-1) }] },
            "overlap" => good with { Touches = [touch, touch with { Start = Seconds(3) }], End = Seconds(20) },
            "past end" => good with { End = Seconds(2) },
            "no tool" => good with { Touches = [touch with { Tip = null }] },
            _ => good with { End = Seconds(0) },
        };

        output.WriteLine(Assert.IsType<HeatOutcome.Impossible>(HeatSolver.Solve(bad)).Rule);
    }
}
