using ReworkThermal.Core.HeatFlow;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Published;

public sealed class HeatFlowPlatedHoleTests(ITestOutputHelper output)
{
    [Fact]
    public void Try()
    {
        static Length Mm(double v) => Length.FromMillimeters(v);
        static PosedMaterial.Solid S(double kr, double kz, double rho, double c) => new(ThermalConductivity.FromWattsPerMeterKelvin(kr), ThermalConductivity.FromWattsPerMeterKelvin(kz), Density.FromKilogramsPerCubicMeter(rho), SpecificEntropy.FromJoulesPerKilogramKelvin(c));
        PosedMaterial cu = S(394, 394, 8920, 386);
        PosedMaterial sol = S(60, 60, 7400, 230);
        PosedMaterial fr = S(1.059, 0.343, 1850, 1000);
        Temperature t0 = Temperature.FromDegreesCelsius(25);
        TimeCourse room = new TimeCourse.Constant(t0);
        FaceCondition air = new FaceCondition.Convection(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10), room);
        PosedProblem p = new()
        {
            InnerRadius = Length.Zero,
            OuterRadius = Mm(25),
            Height = Mm(1.6),
            Blocks = [
                new PosedBlock(Mm(0), Mm(25), Mm(0), Mm(1.6), fr, t0),
                new PosedBlock(Mm(0.5), Mm(25), Mm(0.7825), Mm(0.8175), cu, t0),
                new PosedBlock(Mm(0), Mm(1), Mm(0), Mm(0.035), cu, t0),
                new PosedBlock(Mm(0), Mm(1), Mm(1.565), Mm(1.6), cu, t0),
                new PosedBlock(Mm(0.5), Mm(0.525), Mm(0), Mm(1.6), cu, t0),
                new PosedBlock(Mm(0.4), Mm(0.5), Mm(0), Mm(1.6), sol, t0),
                new PosedBlock(Mm(0), Mm(0.4), Mm(0), Mm(1.6), cu, t0)],
            Stages = [new PosedStage(Duration.FromSeconds(5), [
                new FacePatch(ThermalFace.Top, Mm(0), Mm(1), new FaceCondition.Convection(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(2e4), new TimeCourse.Constant(Temperature.FromDegreesCelsius(350)))),
                new FacePatch(ThermalFace.Top, Mm(1), Mm(25), air),
                new FacePatch(ThermalFace.Bottom, Mm(0), Mm(25), air)])],
            RadialDivisions = [new Division(Mm(0.4), 4), new Division(Mm(0.5), 2), new Division(Mm(0.525), 1), new Division(Mm(1), 6), new Division(Mm(25), 27, 1.18)],
            AxialDivisions = [new Division(Mm(0.035), 1), new Division(Mm(0.7825), 12), new Division(Mm(0.8175), 1), new Division(Mm(1.565), 11), new Division(Mm(1.6), 1)],
            Probes = [new PosedProbe("solder", Mm(0.45), Mm(0)), new PosedProbe("pad", Mm(0.95), Mm(0)), new PosedProbe("plane", Mm(5), Mm(0.8))],
        };
        foreach (double tol in new[] { 0.2, 0.05, 0.01, 0.001 })
        foreach (double refine in new[] { 1.0, 2.0 })
        {
            SolverSettings settings = new() { StepTolerance = TemperatureDelta.FromKelvins(tol), Refinement = refine };
            HeatRun run = ((HeatOutcome.Completed)HeatSolver.Solve(p, settings)).Run;
            System.Diagnostics.Stopwatch w = System.Diagnostics.Stopwatch.StartNew();
            for (int i = 0; i < 5; i++) run = ((HeatOutcome.Completed)HeatSolver.Solve(p, settings)).Run;
            output.WriteLine($"tol {tol} refine {refine}: {w.Elapsed.TotalMilliseconds / 5:0.0} ms {run.Mesh} err {run.Energy.BalanceError:e2} {string.Join(" ", run.Energy.HeatInJ)} stored {run.Energy.StoredJ}");
            foreach (var h in run.Probes) output.WriteLine($"   {h.Key}: {string.Join(" ", new[] { 0.5, 2, 5 }.Select(t => At(h.Value, t).ToString("0.000")))}");
        }
    }

    private static double At(TemperatureHistory h, double t)
    {
        int i = 0;
        while (i + 2 < h.Seconds.Length && h.Seconds[i + 1] < t) i++;
        double s = (t - h.Seconds[i]) / (h.Seconds[i + 1] - h.Seconds[i]);
        return h.Celsius[i] + s * (h.Celsius[i + 1] - h.Celsius[i]);
    }
}
