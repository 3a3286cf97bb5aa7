using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Posing;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Verification.Textbook;

/// <summary>The axisymmetric cases of the reference table thermal.csv, each giving its quantities in the order of the table.</summary>
internal static class PosedRings
{
    internal static readonly Dictionary<string, Func<double[]>> Cases = new(StringComparer.Ordinal)
    {
        ["TB08"] = LongCylinder,
        ["TB10"] = ShortCylinder,
        ["TB11"] = BrassCylinder,
        ["TB22"] = () => [.. AnnularFin(0.025, 0.045, 0.006, 186, 50, 200), .. AnnularFin(0.0125, 0.0275, 0.001, 200, 65, 75)],
        ["TB23"] = CopperSheet,
        ["TB24"] = PinFins,
        ["TB25"] = () => FluxDisc(0.343, true),
        ["TB26"] = () => [HeldDisc()],
        ["TB27"] = () => FluxDisc(1.059, false),
        ["TB28"] = DiscOnPlate,
        ["TB30"] = LineSource,
        ["TB31"] = () => [.. BoreRun(Held(1)).Select(s => s.Watts / (2 * Math.PI))],
        ["TB32"] = () => [.. BoreRun(Flux(1)).Take(4).Select(s => s.Kelvin)],
        ["TB49"] = () =>
        {
            HeatRun run = Run(Ring(0.001, 0.002, 1, Solid(394, 1e6), 0, [Cells(0.002, 40)], [Cells(1, 1)], 1, [Point("p", 0.0015, 0.5)], On(ThermalFace.Bore, Held(100)), On(ThermalFace.Rim, Held(0))) with { Steady = true });
            return [run.Watts["bore"][0], run.Probes["p"].At(0)];
        },
    };

    private static double[] LongCylinder()
    {
        PosedMaterial aluminium = Solid(215, 215 / 8.4e-5);
        HeatRun run = Run(Ring(0, 0.025, 1, aluminium, 200, [Cells(0.025, 40)], [Cells(1, 1)], 60, [Point("a", 0.0125, 0.5), Point("b", 0, 0.5), Point("c", 0.025, 0.5)], On(ThermalFace.Rim, Gas(525, 70))), Fine());
        return [run.Probes["a"].At(60), run.Probes["b"].At(60), run.Probes["c"].At(60), -run.Energy.StoredJ * Books(2700, 900, 215, 8.4e-5)];
    }

    private static double[] ShortCylinder()
    {
        HeatRun run = Cylinder(0.025, 0.10, 215, 8.4e-5, 200, 525, 70, 60, [Point("a", 0.0125, 0.00625), Point("b", 0, 0.05)]);
        return [run.Probes["a"].At(60), run.Probes["b"].At(60), -run.Energy.StoredJ * Books(2700, 900, 215, 8.4e-5)];
    }

    private static double[] BrassCylinder()
    {
        HeatRun run = Cylinder(0.05, 0.12, 110, 3.39e-5, 120, 60, 25, 900, [Point("a", 0, 0.06), Point("b", 0, 0.12)]);
        return [run.Probes["a"].At(900), run.Probes["b"].At(900), -run.Energy.StoredJ * Books(8530, 380, 110, 3.39e-5)];
    }

    // The book gives density and specific heat for the energy that do not quite agree with its k and alpha.
    private static double Books(double density, double heat, double k, double alpha) => density * heat / (k / alpha);

    private static HeatRun Cylinder(double radius, double height, double k, double alpha, double start, double h, double gas, double seconds, PosedProbe[] probes) => Run(
        Ring(0, radius, height, Solid(k, k / alpha), start, [Cells(radius, 24)], [Cells(height, 40)], seconds, probes, On(ThermalFace.Rim, Gas(h, gas)), On(ThermalFace.Top, Gas(h, gas)), On(ThermalFace.Bottom, Gas(h, gas))),
        Fine());

    // The tip's loss is in the corrected radius r2 + t/2, as in the book's formula; half the thickness by symmetry.
    private static double[] AnnularFin(double inner, double outer, double thickness, double k, double h, double excess)
    {
        double corrected = outer + (thickness / 2);
        HeatRun run = Run(Ring(inner, corrected, thickness / 2, Solid(k, 1e6), 0, [Cells(corrected, 60)], [Cells(thickness / 2, 4)], 1, [], On(ThermalFace.Bore, Held(excess)), On(ThermalFace.Top, Gas(h, 0))) with { Steady = true });
        double heat = 2 * run.Watts["bore"][0];
        return [heat / (h * 2 * Math.PI * ((corrected * corrected) - (inner * inner)) * excess), heat];
    }

    private static double[] CopperSheet()
    {
        HeatRun wide = Sheet(0.4);
        HeatRun disc = Sheet(0.05);
        return [wide.Watts["bore"][0], wide.Probes["r5"].At(0), wide.Probes["r10"].At(0), disc.Watts["bore"][0], disc.Probes["rim"].At(0)];
    }

    private static HeatRun Sheet(double rim) => Run(
        Ring(0.0005, rim, 35e-6, Solid(394, 1e6), 0, [Cells(rim, 120, 1.05)], [Cells(35e-6, 1)], 1, [Point("r5", 0.005, 17e-6), Point("r10", 0.01, 17e-6), Point("rim", rim, 17e-6)], On(ThermalFace.Bore, Held(1)), On(ThermalFace.Top, Gas(10, 0)), On(ThermalFace.Bottom, Gas(10, 0))) with { Steady = true });

    private static double[] PinFins()
    {
        HeatRun pin = Run(Ring(0, 0.0015, 0.03, Solid(15, 1e6), 20, [Cells(0.0015, 4)], [Cells(0.03, 60)], 1, [Point("tip", 0, 0.03)], On(ThermalFace.Bottom, Held(120)), On(ThermalFace.Rim, Gas(10, 20))) with { Steady = true });
        HeatRun rod = Run(Ring(0, 0.0025, 0.6, Solid(398, 1e6), 0, [Cells(0.0025, 4)], [Cells(0.6, 150, 1.02)], 1, [], On(ThermalFace.Bottom, Held(75)), On(ThermalFace.Rim, Gas(100, 0))) with { Steady = true });
        return [pin.Probes["tip"].At(0), rod.Watts["bottom"][0]];
    }

    // Steady values on a body of 1 m, so that the far field is cold to a tenth of a percent.
    private static double[] FluxDisc(double radial, bool withEdge)
    {
        PosedMaterial glass = Solid(radial, 0.343, 1850.0 * 1000);
        FacePatch flux = On(ThermalFace.Top, Flux(1e5), 0, 0.001);
        PosedProbe[] probes = [Point("centre", 0, 1), Point("edge", 0.001, 1), .. Enumerable.Range(0, 20).Select(i => Point($"m{i}", RingMiddle(i), 1))];
        PosedProblem far = Ring(0, 1, 1, glass, 0, [Cells(0.001, 40), Cells(1, 90, 1.1)], [Cells(1, 100, 1 / 1.1)], 1, probes, flux, On(ThermalFace.Bottom, Held(0)), On(ThermalFace.Rim, Held(0))) with { Steady = true };
        HeatRun steady = Run(far);
        double mean = Enumerable.Range(0, 20).Average(i => steady.Probes[$"m{i}"].At(0));
        PosedProblem near = Ring(0, 0.03, 0.03, glass, 0, [Cells(0.001, 30), Cells(0.03, 40, 1.1)], [Cells(0.03, 70, 1 / 1.08)], 10, [Point("centre", 0, 0.03)], flux);
        TemperatureHistory centre = Run(near, Fine()).Probes["centre"];
        double[] rises = [centre.At(0.1), centre.At(1), centre.At(10)];
        double[] settled = withEdge ? [steady.Probes["centre"].At(0), mean, steady.Probes["edge"].At(0)] : [steady.Probes["centre"].At(0), mean];
        return [.. settled, .. rises];
    }

    // Twenty rings of equal area on the disc.
    private static double RingMiddle(int ring) => 0.001 * Math.Sqrt((ring + 0.5) / 20);

    private static double HeldDisc()
    {
        PosedProblem problem = Ring(0, 1, 1, Solid(0.343, 1e6), 0, [Cells(0.001, 60, 0.94), Cells(1, 110, 1.1)], [Cells(1, 120, 1 / 1.1)], 1, [], On(ThermalFace.Top, Held(1), 0, 0.001), On(ThermalFace.Bottom, Held(0)), On(ThermalFace.Rim, Held(0))) with { Steady = true };
        return Run(problem).Watts["top"][0];
    }

    private static double[] DiscOnPlate()
    {
        double flux = 1 / (Math.PI * 1e-6);
        PosedProbe[] probes = [Point("centre", 0, 0.0016), .. Enumerable.Range(0, 20).Select(i => Point($"m{i}", RingMiddle(i), 0.0016))];
        HeatRun run = Run(Ring(0, 0.01, 0.0016, Solid(17, 1e6), 0, [Cells(0.001, 30), Cells(0.01, 40, 1.06)], [Cells(0.0016, 40)], 1, probes, On(ThermalFace.Top, Flux(flux), 0, 0.001), On(ThermalFace.Bottom, Gas(1000, 0))) with { Steady = true });
        return [run.Probes["centre"].At(0), Enumerable.Range(0, 20).Average(i => run.Probes[$"m{i}"].At(0))];
    }

    // The line is a bore of 10 um.
    private static double[] LineSource()
    {
        const double bore = 1e-5;
        HeatRun run = Run(Ring(bore, 0.1, 1, Solid(0.343, 1850.0 * 1000), 0, [Cells(0.1, 160, 1.06)], [Cells(1, 1)], 100, [Point("p", 0.001, 0.5)], On(ThermalFace.Bore, Flux(10 / (2 * Math.PI * bore)))), Fine(0.001));
        return [run.Probes["p"].At(1), run.Probes["p"].At(10), run.Probes["p"].At(100)];
    }

    private static List<(double Kelvin, double Watts)> BoreRun(FaceCondition condition)
    {
        HeatRun run = Run(Ring(1, 300, 1, Solid(1, 1), 0, [Cells(300, 220, 1.04)], [Cells(1, 1)], 1000, [Point("wall", 1, 0.5)], On(ThermalFace.Bore, condition)), Fine(1e-5, 1e-5));
        return [.. new double[] { 0.1, 1, 10, 100, 1000 }.Select(fo => (run.Probes["wall"].At(fo), SeriesAt(run.Seconds, run.Watts["bore"], fo)))];
    }
}
