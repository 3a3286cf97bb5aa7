using MathNet.Numerics;
using MathNet.Numerics.Integration;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>Sums over moving temperatures against closed forms.</summary>
public sealed class DamageIntegrationTests
{
    // Molar gas constant [J/(mol K)], exact since 2019 (CODATA 2018).
    private const double GasConstant = 8.31446261815324;

    /// <summary>
    /// On a ramp, the integral of exp(-B/T) dT is T exp(-B/T) - B E1(B/T), E1 the exponential integral. Required error: 0.1 %; the
    /// three-point rule on unit steps of the exponent reaches 1e-5.
    /// </summary>
    [Theory]
    [InlineData(25, 350, 4)]
    [InlineData(150, 260, 30)]
    [InlineData(320, 40, 12)]
    [InlineData(255, 256, 1)]
    [InlineData(-20, 450, 1)]
    public void A_ramp_agrees_with_the_exponential_integral(double from, double to, double seconds)
    {
        LaminateSums sums = DamageBench.Model("A").Kinetics.Spent(new TemperatureHistory([0, seconds], [from, to]));
        Close(100e3, sums.LowEnergy);
        Close(150e3, sums.CentralEnergy);
        Close(200e3, sums.HighEnergy);

        void Close(double energy, double actual)
        {
            double b = energy / GasConstant;
            double exact = seconds / 600 * Math.Exp(b / 533.15) * (Primitive(b, to + 273.15) - Primitive(b, from + 273.15)) / (to - from);
            Assert.InRange(actual / exact, 1 - 1e-5, 1 + 1e-5);
        }
    }

    [Fact]
    public void A_curved_history_agrees_with_fine_quadrature()
    {
        // A touch as a technician makes it: rise to 262 °C with a time constant of 3 s, then fall, sampled ten times a second.
        static double Celsius(double t) => t < 10 ? 100 + (162 * (1 - Math.Exp(-t / 3))) : 60 + ((Celsius(9.999999) - 60) * Math.Exp(-(t - 10) / 8));
        double[] times = [.. Enumerable.Range(0, 401).Select(i => i * 0.1)];
        double[] values = [.. times.Select(Celsius)];
        double b = 150e3 / GasConstant;
        double Rate(double t) => Math.Exp((b / 533.15) - (b / (Celsius(t) + 273.15))) / 600;
        double exact = GaussLegendreRule.Integrate(Rate, 0, 10, 64) + GaussLegendreRule.Integrate(Rate, 10, 40, 64);
        double actual = DamageBench.Model("A").Kinetics.Spent(new TemperatureHistory(times, values)).CentralEnergy;
        Assert.InRange(actual / exact, 1 - 1e-3, 1 + 1e-3);
    }

    [Fact]
    public void A_single_sample_costs_nothing() =>
        Assert.Equal(default, DamageBench.Model("A").Kinetics.Spent(new TemperatureHistory([3], [300])));

    /// <summary>At the anchor every energy gives T260 itself, so that ten minutes use up class A.</summary>
    [Fact]
    public void T260_uses_up_the_class_at_260()
    {
        LaminateSums sums = DamageBench.Model("A").Kinetics.Spent(DamageBench.Celsius(260), Duration.FromMinutes(10));
        Assert.Equal(1, sums.LowEnergy, 1e-12);
        Assert.Equal(1, sums.CentralEnergy, 1e-12);
        Assert.Equal(1, sums.HighEnergy, 1e-12);
    }

    /// <summary>A closed charge at rest: depth (V/A)(rhoL/rhoCu)(ws - w0)(1 - exp(-k t/(V/A))); a bath: k (rhoL/rhoCu)(ws - w0) t.</summary>
    [Fact]
    public void Steady_dissolution_agrees_with_the_closed_form()
    {
        double drive = DamageSolubilityFit.Mix.SaturationMassFraction(235) - 0.0025;
        double closed = 0.3e-3 * (7800 / 8960.0) * drive * (1 - Math.Exp(-1.8e-5 * 50 / 0.3e-3));
        double open = 1.8e-5 * (7800 / 8960.0) * drive * 50;
        Assert.Equal(1, Lost([0, 50], [235, 235], 0.3) / closed, 1e-12);
        Assert.Equal(1, Lost([0, 50], [235, 235], null) / open, 1e-12);
    }

    /// <summary>A bath on a ramp through its melting: only the molten part works; against fine quadrature, error under 0.1 %.</summary>
    [Fact]
    public void A_ramp_dissolves_while_molten()
    {
        static double Drive(double t) => Math.Max(0, DamageSolubilityFit.Mix.SaturationMassFraction(100 + (20 * t)) - 0.0001);
        double exact = 1.8e-5 * (7800 / 8960.0) * GaussLegendreRule.Integrate(Drive, 2, 9, 64);
        Assert.InRange(Lost([0, 9], [100, 280], null, 0.0001) / exact, 0.999, 1.001);
    }

    /// <summary>A closed charge on a ramp: converges to the fine solution of dw/dt = k (A/V)(ws - w), error under 0.1 %.</summary>
    [Fact]
    public void A_closed_charge_on_a_ramp_agrees_with_a_fine_solution()
    {
        const int Steps = 200_000;
        double held = 0.0025;
        for (int i = 0; i < Steps; i++)
        {
            double celsius = 200 + (80 * (i + 0.5) / Steps);
            held += 1.8e-5 / 0.16e-3 * Math.Max(0, DamageSolubilityFit.Mix.SaturationMassFraction(celsius) - held) * (40.0 / Steps);
        }

        double exact = (held - 0.0025) * 0.16e-3 * 7800 / 8960;
        Assert.InRange(Lost([0, 40], [200, 280], 0.16) / exact, 0.999, 1.001);
    }

    private static double Primitive(double b, double kelvin) =>
        (kelvin * Math.Exp(-b / kelvin)) - (b * SpecialFunctions.ExponentialIntegral(b / kelvin, 1));

    private static double Lost(double[] seconds, double[] celsius, double? volumeToAreaMm, double copper = 0.0025)
    {
        DamageModel model = DamageBench.Model("B");
        MoltenContact charge = DamageBench.Charge(DamageSolubilityFit.Mix, copper, 7800, volumeToAreaMm);
        PadExposure exposure = new(new TemperatureHistory(seconds, celsius), true, charge, HeatedRegion.Local, ExposureStart.AfterCooling);
        return model.After(model.Begin(DamageBench.Untouched), exposure).Central.Copper.LostM;
    }
}
