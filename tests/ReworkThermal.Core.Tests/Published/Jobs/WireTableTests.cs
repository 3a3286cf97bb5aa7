using ReworkThermal.Core.Jobs.Wiring;
using ReworkThermal.Data.Reference;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published.Jobs;

/// <summary>
/// Wire figures beyond the gauges that are verified row by row. Source of the currents in wire-gauges.csv: the greatest current for chassis
/// wiring of the Handbook of Electronic Tables and Formulas for American Wire Gauge.
/// </summary>
public sealed class WireTableTests
{
    public static IEnumerable<object[]> ChassisCurrents =>
        ReferenceLibrary.Rows("wire-gauges.csv").Select(r => new object[] { (int)r.Number("gauge"), r.Number("chassis_a") });

    [Theory]
    [MemberData(nameof(ChassisCurrents))]
    public void Chassis_wiring_currents_are_below_the_fusing_current(int gauge, double amperes) =>
        Assert.True(amperes < FusingCurrent.Preece(new WireGauge(gauge)).Amperes);

    // The limit of current density stands on gauges 24 to 40 of that column. 10 %: the currents are printed with one or two digits.
    [Theory]
    [MemberData(nameof(ChassisCurrents))]
    public void Chassis_wiring_currents_are_17_amperes_a_square_millimetre_for_thin_wires(int gauge, double amperes)
    {
        if (gauge >= 24)
        {
            Assert.InRange(amperes / new WireGauge(gauge).Section.SquareMillimeters, 15.3, 18.7);
        }
    }

    // A second published table: a cable-tester maker's wire resistance table prints 10.025 mil, 100.50 circular mils and 0.1032 ohm/ft for
    // gauge 30, and 20.100 mil for gauge 24.
    [Fact]
    public void A_second_table_agrees()
    {
        Assert.Equal(10.025, new WireGauge(30).Diameter.Mils, 3);
        Assert.Equal(20.100, new WireGauge(24).Diameter.Mils, 2);
        Assert.Equal(0.1032, CopperConductor.Resistance(new WireGauge(30).Section, Length.FromFeet(1), Temperature.FromDegreesCelsius(20)).Ohms, 4);
    }

    // ASTM B258 by definition: gauge 36 is 5 mil; each gauge is 92^(1/39) thinner.
    [Fact]
    public void The_definition_holds()
    {
        Assert.Equal(5.0, new WireGauge(36).Diameter.Mils, 12);
        Assert.Equal(Math.Pow(92, 26 / 39.0), new WireGauge(10).Diameter / new WireGauge(36).Diameter, 10);
    }

    // IEC 60028: 1/58 ohm mm²/m at 20 °C, coefficient 0.00393/K; at 75 °C a resistance is 1.21615 times that at 20 °C.
    [Fact]
    public void Standard_annealed_copper()
    {
        Area square = Area.FromSquareMillimeters(1);
        Assert.Equal(1 / 58.0, CopperConductor.Resistance(square, Length.FromMeters(1), Temperature.FromDegreesCelsius(20)).Ohms, 12);
        Assert.Equal(1.21615 / 58, CopperConductor.Resistance(square, Length.FromMeters(1), Temperature.FromDegreesCelsius(75)).Ohms, 10);
        Assert.Equal(2.46, CopperConductor.Resistance(Area.FromSquareMillimeters(0.2 * 0.035), Length.FromMeters(1), Temperature.FromDegreesCelsius(20)).Ohms, 2);
    }

    // Fusing currents worked out outside the program (Python) from the two published formulas; the constants 10244 and 33 as printed in
    // fuse-design notes.
    [Theory]
    [InlineData(24, 29.1936, 59.1096)]
    [InlineData(30, 10.2827, 14.7033)]
    [InlineData(36, 3.62180, 3.65741)]
    [InlineData(40, 1.80636, 1.44659)]
    public void Fusing_currents(int gauge, double preece, double onderdonk)
    {
        WireGauge wire = new(gauge);
        Assert.InRange(FusingCurrent.Preece(wire).Amperes / preece, 0.9999, 1.0001);
        Assert.InRange(FusingCurrent.Onderdonk(wire, Temperature.FromDegreesCelsius(25), Duration.FromSeconds(1)).Amperes / onderdonk, 0.9999, 1.0001);
    }

    // Preece's steady fusing current is an experiment on bare wire. At 0.4 of it a long wire must settle even without radiation; at 0.6 it
    // must not melt when it radiates; at 1.5 times it must melt. The factors cover emissivity and the scatter of fusing tests.
    [Theory]
    [InlineData(24)]
    [InlineData(30)]
    [InlineData(36)]
    public void Long_wires_melt_near_the_published_fusing_current(int gauge)
    {
        WireGauge wire = new(gauge);
        WireWarming At(double share) => WireHeating.Steady(
            wire, Length.FromMeters(1), Length.Zero, 0.5, FusingCurrent.Preece(wire) * share, Temperature.FromDegreesCelsius(25));
        _ = Assert.IsType<WireWarming.Settles>(At(0.4));
        Assert.IsNotType<WireWarming.Melts>(At(0.6));
        _ = Assert.IsType<WireWarming.Melts>(At(1.5));
    }

    // Air at 300 K and 101.325 kPa: k 26.3e-3 W/mK, kinematic viscosity 15.89e-6 m²/s (Incropera, Fundamentals of Heat and Mass
    // Transfer, table A.4, from memory); at 600 K 46.9e-3 and 52.69e-6. 3 %: Sutherland's law is good to 2 %, the
    // density printed there for 600 K is 1.3 % below that of an ideal gas.
    [Theory]
    [InlineData(300, 26.3e-3, 15.89e-6)]
    [InlineData(600, 46.9e-3, 52.69e-6)]
    public void Air(double kelvins, double conductivity, double viscosity)
    {
        Assert.InRange(StillAir.Conductivity(kelvins) / conductivity, 0.97, 1.03);
        Assert.InRange(StillAir.KinematicViscosity(kelvins) / viscosity, 0.97, 1.03);
    }

    // V.T. Morgan, Advances in Heat Transfer 11 (1975) 199: Nu = 0.675 Ra^0.058 below Ra 1e-2, 1.02 Ra^0.148 up to 1e2 (from memory). Two
    // correlations of scattered thin-wire data: agreement within 30 %.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.25)]
    [InlineData(0.5)]
    public void Convection_agrees_with_an_independent_correlation(double millimetres)
    {
        const double wireK = 373;
        const double airK = 298;
        double d = millimetres / 1000;
        const double filmK = (wireK + airK) / 2;
        double viscosity = StillAir.KinematicViscosity(filmK);
        double rayleigh = 0.70 * 9.80665 / filmK * (wireK - airK) * d * d * d / (viscosity * viscosity);
        double nusselt = rayleigh < 1e-2 ? 0.675 * Math.Pow(rayleigh, 0.058) : 1.02 * Math.Pow(rayleigh, 0.148);
        Assert.InRange(StillAir.Coefficient(d, wireK, airK) * d / StillAir.Conductivity(filmK) / nusselt, 0.7, 1.3);
    }
}
