using MathNet.Numerics;
using MathNet.Numerics.RootFinding;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Posing;
using Xunit.Abstractions;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>
/// Exact solutions evaluated here: slab and solid cylinder with convection (Carslaw and Jaeger, Conduction of Heat in Solids, sections
/// 3.11 and 7.7), melting of a half-space (Neumann; Carslaw and Jaeger 11.2).
/// </summary>
public sealed class HeatFlowSeriesTests(ITestOutputHelper output)
{
    private const double K = 0.343;
    private const double VolumetricHeat = 1.85e6;
    private const double Alpha = K / VolumetricHeat;

    [Theory]
    [InlineData(0.2)]
    [InlineData(1)]
    [InlineData(20)]
    public void Slab_with_convection_follows_the_exact_series(double biot)
    {
        const double half = 0.8e-3;
        PosedProbe[] probes = [.. Enumerable.Range(0, 9).Select(i => Point($"{i}", 0, half * i / 8))];
        PosedProblem problem = Slab([(half, Solid(K, VolumetricHeat), 300)], [Cells(half, 24)], 6, probes, On(ThermalFace.Top, Gas(biot * K / half, 20)));
        HeatRun run = Run(problem);
        double[] roots = [.. Enumerable.Range(0, 60).Select(n => Brent.FindRoot(z => (z * Math.Sin(z)) - (biot * Math.Cos(z)), n * Math.PI, (n + 0.5) * Math.PI, 1e-12))];
        Compare(run, half, (x, fourier) => roots.Sum(z =>
            4 * Math.Sin(z) / ((2 * z) + Math.Sin(2 * z)) * Math.Exp(-z * z * fourier) * Math.Cos(z * x)));
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(1)]
    [InlineData(20)]
    public void Cylinder_with_convection_follows_the_exact_series(double biot)
    {
        const double radius = 0.8e-3;
        PosedProbe[] probes = [.. Enumerable.Range(0, 9).Select(i => Point($"{i}", radius * i / 8, 0.5))];
        PosedProblem problem = Ring(0, radius, 1, Solid(K, VolumetricHeat), 300, [Cells(radius, 24)], [Cells(1, 1)], 6, probes, On(ThermalFace.Rim, Gas(biot * K / radius, 20)));
        HeatRun run = Run(problem);
        double[] roots = [.. Enumerable.Range(0, 60).Select(n => Brent.FindRoot(z => (z * SpecialFunctions.BesselJ(1, z)) - (biot * SpecialFunctions.BesselJ(0, z)), ZeroOfJ1(n), ZeroOfJ1(n + 1), 1e-10))];
        Compare(run, radius, (x, fourier) => roots.Sum(z =>
        {
            double j0 = SpecialFunctions.BesselJ(0, z);
            double j1 = SpecialFunctions.BesselJ(1, z);
            return 2 * j1 / (z * ((j0 * j0) + (j1 * j1))) * Math.Exp(-z * z * fourier) * SpecialFunctions.BesselJ(0, z * x);
        }));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    public void Melting_front_follows_Neumanns_solution(double seconds)
    {
        // Tin-like round figures, solid 150 °C, wall at 300 °C, melting point 232 °C.
        const double solidK = 60;
        const double liquidK = 30;
        const double heat = 7000.0 * 240;
        const double latent = 7000 * 59e3;
        EnthalpyCurve tin = EnthalpyCurve.Melting(
            Celsius(232), Celsius(232), UnitsNet.SpecificEnergy.FromKilojoulesPerKilogram(59), Heat(240), Heat(240), KgPerM3(7000), Conductivity(solidK), Conductivity(liquidK));
        const double depth = 0.05;
        PosedProblem problem = Slab([(depth, new PosedMaterial.Melting(tin), 150)], [Cells(0.005, 120), Cells(depth, 50, 1.06)], seconds, [], On(ThermalFace.Bottom, Held(300)));
        HeatRun run = Run(problem, Fine(0.05));
        double ratio = Math.Sqrt(liquidK / solidK);
        double lambda = Brent.FindRoot(
            l => (liquidK * 68 / Math.Sqrt(liquidK / heat) * Math.Exp(-l * l) / SpecialFunctions.Erf(l))
                - (solidK * 82 / Math.Sqrt(solidK / heat) * Math.Exp(-l * l * ratio * ratio) / SpecialFunctions.Erfc(l * ratio))
                - (latent * Math.Sqrt(Math.PI) * l * Math.Sqrt(liquidK / heat)),
            0.01,
            2,
            1e-12);
        double exact = 2 * lambda * Math.Sqrt(liquidK / heat * seconds);
        double computed = depth * run.LiquidShare[^1];

        output.WriteLine($"front exact {exact * 1e3:0.0000} mm, computed {computed * 1e3:0.0000} mm");
        Assert.InRange(computed, exact * 0.99, exact * 1.01);
        Assert.InRange(run.Energy.BalanceError, 0, 1e-3);
    }

    // Within half a percent of the span at all times past the first 2 % of a diffusion time, at nine places.
    private void Compare(HeatRun run, double length, Func<double, double, double> series)
    {
        double worst = 0;
        for (int i = 0; i < 9; i++)
        {
            TemperatureHistory history = run.Probes[$"{i}"];
            for (int s = 0; s < history.Seconds.Length; s++)
            {
                double fourier = Alpha * history.Seconds[s] / (length * length);
                if (fourier > 0.02)
                {
                    double exact = 20 + (280 * series(i / 8.0, fourier));
                    worst = Math.Max(worst, Math.Abs(history.Celsius[s] - exact));
                }
            }
        }

        output.WriteLine($"largest error {worst:0.000} K of a span of 280 K ({worst / 2.8:0.000} %), {run.Mesh.Steps} steps, balance {run.Energy.BalanceError:e1}");
        Assert.InRange(worst, 0, 0.005 * 280);
        Assert.InRange(run.Energy.BalanceError, 0, 1e-3);
    }

    // McMahon's expansion brackets the zeros of J1 closely; n = 0 is the zero at the origin.
    private static double ZeroOfJ1(int n)
    {
        if (n == 0)
        {
            return 1e-9;
        }

        double beta = (n + 0.25) * Math.PI;
        return Brent.FindRoot(z => SpecialFunctions.BesselJ(1, z), beta - 0.5, beta + 0.5, 1e-12);
    }
}
