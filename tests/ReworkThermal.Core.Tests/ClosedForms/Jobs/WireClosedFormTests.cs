using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs.Wiring;
using UnitsNet;

namespace ReworkThermal.Core.Tests.ClosedForms.Jobs;

public sealed class WireClosedFormTests
{
    private static readonly Temperature _room = Temperature.FromDegreesCelsius(25);

    private static readonly Provenance _made = new("judgement, no source", EvidenceMark.Judgement);

    private static readonly WireLimits _limits = new(
        Certain(0.1), Certain(17.0), Certain(0.02), Certain(0.05), Certain(BitRate.FromMegabitsPerSecond(100)), Certain(BitRate.FromGigabitsPerSecond(1)));

    // A very short wire gives its heat to its ends only: θ = q0 l² / (8 k A), the parabola of uniform heating between cold ends.
    [Fact]
    public void A_short_wire_warms_by_the_parabola_between_cold_ends()
    {
        WireGauge wire = new(30);
        const double amperes = 2;
        const double lengthM = 2e-3;
        double area = wire.Section.SquareMeters;
        double q0 = amperes * amperes * (1e-6 / 58 * (1 + (0.00393 * 5))) / area;
        double expected = q0 * lengthM * lengthM / (8 * 390 * area);
        WireWarming.Settles warming = Assert.IsType<WireWarming.Settles>(
            WireHeating.Steady(wire, Length.FromMeters(lengthM), Length.Zero, 0, ElectricCurrent.FromAmperes(amperes), _room));
        Assert.InRange(warming.Low.Kelvins / expected, 0.99, 1.001);
    }

    // A long wire forgets its ends: without insulation and radiation both pictures meet.
    [Fact]
    public void A_long_bare_dull_wire_gives_the_same_in_both_pictures()
    {
        WireWarming.Settles warming = Assert.IsType<WireWarming.Settles>(
            WireHeating.Steady(new WireGauge(30), Length.FromMeters(1), Length.Zero, 0, ElectricCurrent.FromAmperes(1.5), _room));
        Assert.InRange(warming.Low.Kelvins / warming.High.Kelvins, 0.999, 1.0);
    }

    [Fact]
    public void No_current_no_warming()
    {
        WireWarming.Settles warming = Assert.IsType<WireWarming.Settles>(
            WireHeating.Steady(new WireGauge(30), Length.FromMillimeters(20), Length.Zero, 0.9, ElectricCurrent.Zero, _room));
        Assert.Equal(0, warming.High.Kelvins);
        Assert.Equal(0, warming.Low.Kelvins);
    }

    [Fact]
    public void More_current_never_warms_less()
    {
        double low = 0;
        double high = 0;
        for (int tenths = 1; tenths <= 40; tenths++)
        {
            WireWarming.Settles warming = Assert.IsType<WireWarming.Settles>(WireHeating.Steady(
                new WireGauge(30), Length.FromMillimeters(30), Length.FromMicrometers(12), 0.9, ElectricCurrent.FromAmperes(tenths / 10.0), _room));
            Assert.True(warming.Low.Kelvins >= low && warming.High.Kelvins >= high && warming.High >= warming.Low);
            (low, high) = (warming.Low.Kelvins, warming.High.Kelvins);
        }
    }

    // By hand: 3 mm more in one leg, 480 Mbit/s, insulation of permittivity 2.2. In air 3e-3/299792458 = 10.0069 ps; in the insulation times
    // sqrt(2.2) = 1.483240, 14.8427 ps; a bit lasts 2.083333 ns; 0.712449 % of it.
    [Fact]
    public void Pair_delays_follow_a_sum_done_by_hand()
    {
        PairReport report = PairJudge.Judge(
            new PairTask(new WireGauge(30), Length.FromMillimeters(15), Length.FromMillimeters(12), Length.FromMillimeters(0.5), BitRate.FromMegabitsPerSecond(480)),
            Kind(2.2),
            _limits);
        Assert.Equal(3, report.Mismatch.Millimeters, 9);
        Assert.InRange(report.SkewLow.Seconds, 10.0068e-12, 10.0070e-12);
        Assert.InRange(report.SkewHigh.Seconds, 14.8426e-12, 14.8428e-12);
        Assert.Equal(2.083333e-9, report.BitTime.Seconds, 15);
        Assert.Equal(0.00712449, report.SkewShareHigh, 7);
        Assert.Equal([PairConcern.TryAndTest], report.Concerns);
    }

    // By hand for gauge 30 in air: 120 acosh(D/d) with d = 0.254639 mm: D 0.4, 0.5, 0.6 mm give 122.8, 155.5, 180.2 ohm; in Python.
    [Theory]
    [InlineData(0.4, 122.793)]
    [InlineData(0.5, 155.479)]
    [InlineData(0.6, 180.218)]
    public void Two_wire_impedance(double spacing, double ohms) =>
        Assert.Equal(ohms, PairJudge.TwoWireImpedance(new WireGauge(30), Length.FromMillimeters(spacing), 1).Ohms, 0.01);

    // By hand, Rosa 1908: 10 mm of gauge 30: 2 nH/cm × 1 × (ln(40/0.254639) − 0.75) = 8.61 nH.
    [Fact]
    public void Inductance_of_a_straight_wire()
    {
        Assert.Equal(8.61e-9, CopperConductor.Inductance(new WireGauge(30), Length.FromMillimeters(10))!.Value.Henries, 1e-11);
        Assert.Null(CopperConductor.Inductance(new WireGauge(10), Length.FromMillimeters(10)));
    }

    [Fact]
    public void A_thin_wire_for_a_supply_pin_is_refused_with_every_reason()
    {
        WireReport report = WireJudge.Judge(
            new WireTask(new WireGauge(38), Length.FromMillimeters(60), ElectricCurrent.FromAmperes(3), ElectricPotential.FromVolts(5), _room, true),
            Kind(1) with { Insulated = false, Rating = null },
            _limits);
        Assert.Equal(
            [WireConcern.NearFusing, WireConcern.CurrentDensity, WireConcern.VoltageDrop, WireConcern.Melts, WireConcern.NeedsInsulation],
            Assert.IsType<WireFitness.Unfit>(report.Fitness).Concerns);
    }

    [Fact]
    public void A_signal_wire_fits_and_a_supply_wire_at_the_limit_is_close()
    {
        WireLimits strict = _limits with { CurrentDensity = new Estimate<double>(17, 15, 18, _made) };
        WireReport signal = WireJudge.Judge(new WireTask(new WireGauge(34), Length.FromMillimeters(20), ElectricCurrent.FromMilliamperes(20), null, _room, true), Kind(3.5), strict);
        _ = Assert.IsType<WireFitness.Fit>(signal.Fitness);
        Assert.Null(signal.DropShare);
        WireReport supply = WireJudge.Judge(
            new WireTask(new WireGauge(30), Length.FromMillimeters(20), ElectricCurrent.FromAmperes(0.82), ElectricPotential.FromVolts(5), _room, true), Kind(3.5), strict);
        Assert.Equal([WireConcern.CurrentDensity], Assert.IsType<WireFitness.Close>(supply.Fitness).Concerns);
    }

    private static WireKind Kind(double permittivity) => new(
        "test", true, Certain(Temperature.FromDegreesCelsius(155)), Certain(Length.FromMicrometers(12)), Certain(permittivity), Certain(0.9), null);

    private static Estimate<T> Certain<T>(T value)
        where T : struct => new(value, value, value, _made);
}
