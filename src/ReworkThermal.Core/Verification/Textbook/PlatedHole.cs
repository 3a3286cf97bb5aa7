using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Verification.Textbook;

/// <summary>
/// A plated hole with a lead, two pads and one plane, without phase change: case TB46 of the reference table thermal.csv, on which two
/// independent programs agree. The table measures z from the heated face; here the heated face is the top, so its z = 1.6 mm is our 0.
/// </summary>
internal static class PlatedHole
{
    internal static double[] Figures()
    {
        HeatRun run = Run(Problem(5), new SolverSettings { Refinement = 2, StepTolerance = TemperatureDelta.FromKelvins(0.05) });
        return [.. new[] { 0.5, 2, 5 }.SelectMany(t => new[] { run.Probes["solder"].At(t), run.Probes["pad"].At(t), run.Probes["plane"].At(t) })];
    }

    internal static PosedProblem Problem(double seconds)
    {
        const double mm = 1e-3;
        PosedMaterial copper = Solid(394, 8920.0 * 386);
        PosedMaterial glass = Solid(1.059, 0.343, 1850.0 * 1000);
        PosedMaterial solder = Solid(60, 7400.0 * 230);
        PosedBlock Block(double inner, double outer, double bottom, double top, PosedMaterial material) =>
            new(Metre(inner * mm), Metre(outer * mm), Metre(bottom * mm), Metre(top * mm), material, Celsius(25));
        return new PosedProblem
        {
            InnerRadius = Metre(0),
            OuterRadius = Metre(25 * mm),
            Height = Metre(1.6 * mm),
            Blocks =
            [
                Block(0, 25, 0, 1.6, glass),
                Block(0.5, 25, 0.7825, 0.8175, copper),
                Block(0, 1, 0, 0.035, copper),
                Block(0, 1, 1.565, 1.6, copper),
                Block(0.5, 0.525, 0, 1.6, copper),
                Block(0.4, 0.5, 0, 1.6, solder),
                Block(0, 0.4, 0, 1.6, copper),
            ],
            Stages =
            [
                new PosedStage(
                    Seconds(seconds),
                    [
                        On(ThermalFace.Top, Gas(2e4, 350), 0, mm),
                        On(ThermalFace.Top, Gas(10, 25), mm, 25 * mm),
                        On(ThermalFace.Bottom, Gas(10, 25), 0, 25 * mm),
                    ]),
            ],
            RadialDivisions = [Cells(0.4 * mm, 4), Cells(0.5 * mm, 2), Cells(0.525 * mm, 1), Cells(mm, 6), Cells(25 * mm, 27, 1.18)],
            AxialDivisions = [Cells(0.035 * mm, 1), Cells(0.7825 * mm, 12), Cells(0.8175 * mm, 1), Cells(1.565 * mm, 11), Cells(1.6 * mm, 1)],
            Probes = [Point("solder", 0.45 * mm, 0), Point("pad", 0.95 * mm, 0), Point("plane", 5 * mm, 0.8 * mm)],
        };
    }
}
