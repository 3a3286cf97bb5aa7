using ReworkThermal.Core.Jobs.Wiring;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published.Jobs;

/// <summary>
/// Wire figures against the table "Common wire gauges" of HyperPhysics (Georgia State University), which prints T.L. Floyd, Electric
/// Circuit Fundamentals, 2nd ed.: circular mils, ohms per 1000 ft at 20 °C, diameter in inches (cut to five places), and the maximum
/// current for chassis wiring from the Handbook of Electronic Tables and Formulas for American Wire Gauge. The ohms are those of NBS
/// Circular 31, Copper wire tables (1914), for standard annealed copper.
/// </summary>
public sealed class WireTableTests
{
    public static TheoryData<int, double, double, double, double> Rows { get; } = new()
    {
        { 10, 10381, 0.9989, 0.10189, 55 },
        { 12, 6529, 1.588, 0.0808, 41 },
        { 14, 4106.8, 2.525, 0.06408, 32 },
        { 16, 2582.9, 4.016, 0.05082, 22 },
        { 18, 1624.3, 6.385, 0.0403, 16 },
        { 20, 1021.5, 10.15, 0.03196, 11 },
        { 22, 642.4, 16.14, 0.02535, 7 },
        { 24, 404.01, 25.67, 0.0201, 3.5 },
        { 25, 320.4, 32.37, 0.0179, 2.7 },
        { 26, 254.1, 40.81, 0.01594, 2.2 },
        { 27, 201.5, 51.47, 0.0142, 1.7 },
        { 28, 159.79, 64.9, 0.01264, 1.4 },
        { 29, 126.72, 81.83, 0.01126, 1.2 },
        { 30, 100.5, 103.2, 0.01002, 0.86 },
        { 31, 79.7, 130.1, 0.00893, 0.7 },
        { 32, 63.21, 164.1, 0.00795, 0.53 },
        { 33, 50.13, 206.9, 0.00708, 0.43 },
        { 34, 39.75, 260.9, 0.0063, 0.33 },
        { 35, 31.52, 329, 0.00561, 0.27 },
        { 36, 25, 414.8, 0.005, 0.21 },
        { 37, 19.83, 523.1, 0.00445, 0.17 },
        { 38, 15.72, 659.6, 0.00396, 0.13 },
        { 39, 12.47, 831.8, 0.00353, 0.11 },
        { 40, 9.89, 1049, 0.00314, 0.09 },
    };

    // Tolerances: half a unit, or one unit for the diameter that is cut, of the last printed place; 0.1 % where more places are printed
    // than the table's own rounding of the diameter carries.
    [Theory]
    [MemberData(nameof(Rows))]
    public void Diameter_section_and_resistance_follow_the_table(int gauge, double circularMils, double ohmsPer1000Ft, double inches, double chassisAmperes)
    {
        WireGauge wire = new(gauge);
        Assert.InRange(wire.Diameter.Inches, inches - 1e-5, inches + 1e-5);
        Assert.InRange(wire.Diameter.Mils * wire.Diameter.Mils / circularMils, 0.9988, 1.0012);
        double ohms = CopperConductor.Resistance(wire.Section, Length.FromFeet(1000), Temperature.FromDegreesCelsius(20)).Ohms;
        Assert.InRange(ohms / ohmsPer1000Ft, 0.9990, 1.0010);
        Assert.True(chassisAmperes < FusingCurrent.Preece(wire).Amperes);
    }

    // The limit of current density stands on gauges 24 to 40 of that column. 10 %: the currents are printed with one or two digits.
    [Theory]
    [MemberData(nameof(Rows))]
    public void Chassis_wiring_currents_are_17_amperes_a_square_millimetre_for_thin_wires(int gauge, double circularMils, double ohmsPer1000Ft, double inches, double chassisAmperes)
    {
        Assert.True(circularMils > 0 && ohmsPer1000Ft > 0 && inches > 0);
        if (gauge >= 24)
        {
            Assert.InRange(chassisAmperes / new WireGauge(gauge).Section.SquareMillimeters, 15.3, 18.7);
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
