using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Posing;
using UnitsNet;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Verification.Textbook;

/// <summary>The phase-change cases of the reference table thermal.csv, each giving its quantities in the order of the table.</summary>
internal static class PosedMelting
{
    // A hundredth of ice's [J/(kg K)]. It lengthens the run by 0.02 s of 168 s; a tenth of it costs 20 times the steps for 0.018 s of that.
    private const double NearlyNoHeat = 20;

    internal static readonly Dictionary<string, Func<double[]>> Cases = new(StringComparer.Ordinal)
    {
        ["TB38"] = () => [.. new[] { 0.1, 0.2, 0.5, 1, 2 }.Select(OnePhase)],
        ["TB39"] = () => [.. Casting(false), .. Casting(true)],
        ["TB40"] = TwoPhase,
        ["TB41"] = Pasty,
        ["TB43"] = () => [IceLayer(NearlyNoHeat), IceLayer(2040)],
        ["TB44"] = Lumped,
    };

    private static EnthalpyCurve Curve(double solidus, double liquidus, double latent, double solidHeat, double liquidHeat, double density, double solidK, double liquidK) =>
        EnthalpyCurve.Melting(
            Celsius(solidus),
            Celsius(liquidus),
            SpecificEnergy.FromJoulesPerKilogram(latent),
            Heat(solidHeat),
            Heat(liquidHeat),
            KgPerM3(density),
            Conductivity(solidK),
            Conductivity(liquidK));

    // The front's place is the share that froze; lambda = X / (2 sqrt(alpha t)), read at the end of the run.
    private static double OnePhase(double stefan)
    {
        const double depth = 0.02;
        const double wall = 100;
        double latent = 1000 * wall / stefan;
        EnthalpyCurve curve = Curve(200, 200, latent, 1000, 1000, 1000, 1, 1);
        PosedProblem problem = Slab([(depth, new PosedMaterial.Melting(curve), 200.02)], [Cells(depth, 100, 1.01)], 30, [], On(ThermalFace.Bottom, Held(100)));
        HeatRun run = Run(problem, Fine(0.05));
        double front = depth * (1 - run.LiquidShare[^1]);
        return front / (2 * Math.Sqrt(1e-6 * 30));
    }

    private static double[] Casting(bool copperMould)
    {
        const double half = 0.05;
        EnthalpyCurve steel = Curve(1540, 1540, 272e3, 670, 670, 7850, 83, 83);
        double alpha = 83 / (7850.0 * 670);
        List<(double, PosedMaterial, double)> layers = [(half, new PosedMaterial.Melting(steel), 1540.02)];
        List<Division> divisions = [Cells(half, 200)];
        List<PosedProbe> probes = [];
        FacePatch[] patches = [On(ThermalFace.Bottom, Held(28))];
        if (copperMould)
        {
            layers.Insert(0, (0.6, Solid(398, 8960 * 376.0), 28));
            divisions = [Cells(0.6, 120, 1 / 1.05), Cells(0.6 + half, 200)];
            probes.Add(Point("face", 0, 0.6));
            patches = [];
        }

        HeatRun run = Run(Slab(layers, divisions, 80, probes, patches), Fine(0.5));
        double frozen = FirstBelow(run, 1e-3);

        // The time scales as the square of the front's place; zeta follows from when a tenth was still liquid.
        double tenth = FirstBelow(run, 0.1);
        double zeta = 0.9 * half / (2 * Math.Sqrt(alpha * tenth));
        return copperMould ? [frozen, zeta, run.Probes["face"].At(30)] : [frozen, zeta];
    }

    private static double[] TwoPhase()
    {
        EnthalpyCurve curve = Curve(232, 232, 59e3, 240, 240, 7000, 60, 30);
        const double depth = 0.06;
        PosedProblem problem = Slab([(depth, new PosedMaterial.Melting(curve), 150)], [Cells(0.006, 120), Cells(depth, 60, 1.05)], 4, [Point("half", 0, 2.017876e-3), Point("twice", 0, 8.071504e-3)], On(ThermalFace.Bottom, Held(300)));
        HeatRun run = Run(problem, Fine(0.05));
        double atOne = depth * SeriesAt(run.Seconds, run.LiquidShare, 1);
        double atFour = depth * run.LiquidShare[^1];
        double lambda = atFour / (2 * Math.Sqrt(30 / (7000.0 * 240) * 4));
        return [lambda, atOne * 1e3, atFour * 1e3, run.Probes["half"].At(4), run.Probes["twice"].At(4)];
    }

    private static double[] Pasty()
    {
        EnthalpyCurve curve = Curve(138, 180, 45e3, 200, 200, 8500, 40, 40);
        PosedProbe[] probes = [Point("2", 0, 0.002), Point("4", 0, 0.004), Point("6", 0, 0.006), .. Enumerable.Range(0, 241).Select(i => Point($"s{i}", 0, i * 25e-6))];
        PosedProblem problem = Slab([(0.06, new PosedMaterial.Melting(curve), 250)], [Cells(0.006, 150), Cells(0.06, 60, 1.04)], 1, probes, On(ThermalFace.Bottom, Held(100)));
        HeatRun run = Run(problem, Fine(0.02));
        return [Isotherm(run, 138), Isotherm(run, 180), run.Probes["2"].At(1), run.Probes["4"].At(1), run.Probes["6"].At(1)];
    }

    private static double Isotherm(HeatRun run, double celsius)
    {
        for (int i = 1; i <= 240; i++)
        {
            double before = run.Probes[$"s{i - 1}"].At(1);
            double after = run.Probes[$"s{i}"].At(1);
            if (before <= celsius && after > celsius)
            {
                return 25e-3 * (i - 1 + ((celsius - before) / (after - before)));
            }
        }

        return double.NaN;
    }

    // Water between front and far face starts at the freezing point and conducts twice as well as ice, so that the far face's exchange,
    // 57 W/m2K to 4.4 °C, reaches the front nearly whole (the water warms by 0.1 K). The first value all but neglects the heat capacity of the ice.
    private static double IceLayer(double iceHeat)
    {
        const double thickness = 2.5e-3;
        EnthalpyCurve water = Curve(0, 0, 333.7e3, iceHeat, iceHeat, 918, 2.32, 5);
        PosedProblem problem = Slab([(thickness, new PosedMaterial.Melting(water), 0.011)], [Cells(thickness, 150)], 250, [], On(ThermalFace.Bottom, Gas(570, -11)), On(ThermalFace.Top, Gas(57, 4.4)));
        return FirstBelow(Run(problem, Fine(0.01)), 1e-3);
    }

    private static double[] Lumped()
    {
        EnthalpyCurve curve = Curve(138, 180, 45e3, 200, 230, 8500, 4e4, 4e4);
        const double radius = 2.2e-3;
        const double area = Math.PI * radius * radius;
        const double height = 0.5e-3 / 8500 / area;
        PosedProblem problem = Ring(0, radius, height, new PosedMaterial.Melting(curve), 25, [Cells(radius, 1)], [Cells(height, 2)], 9, [Point("p", 0, height / 2)], On(ThermalFace.Top, Flux(5 / area)));
        TemperatureHistory history = Run(problem, Fine(0.005)).Probes["p"];
        return [TimeAt(history, 138), TimeAt(history, 180), TimeAt(history, 200)];
    }

    private static double FirstBelow(HeatRun run, double share)
    {
        for (int i = 1; i < run.Seconds.Count; i++)
        {
            double before = run.LiquidShare[i - 1];
            double after = run.LiquidShare[i];
            if (before > share && after <= share)
            {
                return run.Seconds[i - 1] + ((run.Seconds[i] - run.Seconds[i - 1]) * (before - share) / (before - after));
            }
        }

        return double.NaN;
    }
}
