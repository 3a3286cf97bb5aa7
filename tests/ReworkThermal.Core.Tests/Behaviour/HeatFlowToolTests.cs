using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.Tools;
using UnitsNet;
using static ReworkThermal.Core.Tests.HeatFlowBench;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.Behaviour;

public sealed class HeatFlowToolTests
{
    [Theory]
    [InlineData(350, 40, 6, "hold the nozzle 12 to 72 mm away")]
    [InlineData(350, 40, 80, "hold the nozzle 12 to 72 mm away")]
    [InlineData(350, 10, 12, "2000 to 400000")]
    [InlineData(350, 300, 12, "5 to 120 L/min")]
    [InlineData(900, 40, 12, "up to 500 °C")]
    public void Air_outside_the_correlation_or_the_nozzle_is_refused(double celsius, double flow, double distance, string right)
    {
        AirSetting setting = new(RoundNozzle(), Celsius(celsius), VolumeFlow.FromLitersPerMinute(flow), Mm(distance), Celsius(25));

        string reason = Assert.IsType<SettingOutcome<JetSource>.Refused>(setting.ToSource()).Reason;
        Assert.Contains(right, reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_jet_falls_off_with_the_distance_and_says_what_it_assumed()
    {
        AirSetting setting = new(RoundNozzle(), Celsius(350), VolumeFlow.FromLitersPerMinute(80), Mm(12), Celsius(25));
        SettingOutcome<JetSource>.Ready ready = Assert.IsType<SettingOutcome<JetSource>.Ready>(setting.ToSource());
        JetSource jet = ready.Source;

        // Incropera's form with air from tables gives 451 W/m2K for this case; Sutherland's formulas and film properties all through
        // come out within 15 %.
        Assert.InRange(jet.At(0), 451 * 0.85, 451 * 1.15);
        Assert.True(jet.At(0.02) < jet.At(0.016));
        Assert.True(jet.At(0.04) < jet.At(0.02));
        Assert.Equal(25 + (0.85 * 325), jet.Gas.DegreesCelsius, 1e-9);
        Assert.Equal(45, jet.Reach.Millimeters, 1e-9);
        Assert.Contains(ready.Notes, n => n.Contains("40 %", StringComparison.Ordinal));
    }

    [Fact]
    public void The_local_jet_integrates_to_its_mean()
    {
        // r² mean(r) is twice the integral of local r dr: midpoint rule between 2.5 and 7.5 diameters.
        const int parts = 4000;
        double integral = 0;
        for (int i = 0; i < parts; i++)
        {
            double r = 2.5 + (5 * (i + 0.5) / parts);
            integral += 2 * RoundJet.LocalNusselt(8000, 0.69, 4, r) * r * 5 / parts;
        }

        double expected = (56.25 * RoundJet.MeanNusselt(8000, 0.69, 4, 7.5)) - (6.25 * RoundJet.MeanNusselt(8000, 0.69, 4, 2.5));
        Assert.Equal(expected, integral, expected * 1e-5);
    }

    [Theory]
    [InlineData(1999, 4, 5)]
    [InlineData(8000, 1.9, 5)]
    [InlineData(8000, 4, 2.4)]
    [InlineData(8000, 4, 7.6)]
    public void The_correlation_keeps_to_its_range(double reynolds, double distance, double radius)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundJet.MeanNusselt(reynolds, 0.69, distance, radius));
    }

    [Theory]
    [InlineData(900)]
    [InlineData(20)]
    public void An_iron_beyond_its_range_is_refused(double celsius)
    {
        Iron iron = new()
        {
            Name = "medium chisel",
            PowerLimit = Exactly(Power.FromWatts(75)),
            TipHeatCapacity = Exactly(Entropy.FromJoulesPerKelvin(1)),
            SensorToFaceKelvinPerWatt = Exactly(1.5),
            FaceDiameter = Mm(2.4),
            LeastSetting = Celsius(150),
            MostSetting = Celsius(450),
        };
        IronSetting setting = new(iron, Celsius(celsius), new TipContact(ContactState.Tinned, Exactly(Coefficient(5000)), Exactly(Coefficient(30000)), Exactly(Seconds(2)), WaitsForMelt: false));

        string reason = Assert.IsType<SettingOutcome<TipSource>.Refused>(setting.ToSource()).Reason;
        Assert.Contains("its range is 150 to 450 °C", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leg_wider_than_its_hole_is_refused()
    {
        ImpossibleGeometryException problem = Assert.Throws<ImpossibleGeometryException>(() => Joint(1, FourSpokes(), legMm: 1.2).Check());

        Assert.Equal("leg.diameter", problem.Field);
    }

    [Fact]
    public void A_pad_over_its_antipad_is_refused()
    {
        ImpossibleGeometryException problem = Assert.Throws<ImpossibleGeometryException>(
            () => (Joint(0, FourSpokes()) with { TopPadDiameter = Mm(3) }).Check());

        Assert.Contains("overlaps its antipad", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Layers_thicker_than_the_board_are_refused()
    {
        StackUp good = Board(2).StackUp;

        ImpossibleGeometryException problem = Assert.Throws<ImpossibleGeometryException>(() => new StackUp(good.Copper, good.Dielectrics, Mm(1.0)));
        Assert.Contains("add up to 1.6 mm", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Spokes_wider_than_the_land_they_start_from_are_refused()
    {
        ImpossibleGeometryException problem = Assert.Throws<ImpossibleGeometryException>(
            () => Joint(1, new PlaneConnection.Relieved(4, Mm(1.3), Mm(0.25))).Check());

        Assert.Equal("connection", problem.Field);
        Assert.Contains("on layer 2 4 spoke(s) of 1.3 mm", problem.Message, StringComparison.Ordinal);
    }
}
