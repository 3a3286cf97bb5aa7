using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;

namespace ReworkThermal.Core.Verification.Textbook;

/// <summary>Short ways to pose textbook problems in SI units and degrees Celsius.</summary>
internal static class Posing
{
    internal static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    internal static Duration Seconds(double seconds) => Duration.FromSeconds(seconds);

    internal static ThermalConductivity Conductivity(double value) => ThermalConductivity.FromWattsPerMeterKelvin(value);

    internal static HeatTransferCoefficient Coefficient(double value) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(value);

    internal static Density KgPerM3(double value) => Density.FromKilogramsPerCubicMeter(value);

    internal static SpecificEntropy Heat(double value) => SpecificEntropy.FromJoulesPerKilogramKelvin(value);

    /// <summary>Solves a textbook problem.</summary>
    /// <exception cref="InvalidOperationException">The solver gave up; the message names its outcome.</exception>
    internal static HeatRun Run(PosedProblem problem, SolverSettings? settings = null) => HeatSolver.Solve(problem, settings) switch
    {
        HeatOutcome.Completed completed => completed.Run,
        HeatOutcome other => throw new InvalidOperationException($"a textbook problem was not solved: {other}"),
    };

    internal static Length Metre(double metres) => Length.FromMeters(metres);

    internal static PosedMaterial.Solid Solid(double k, double volumetricHeat) => Solid(k, k, volumetricHeat);

    internal static PosedMaterial.Solid Solid(double radial, double axial, double volumetricHeat) =>
        new(Conductivity(radial), Conductivity(axial), KgPerM3(1000), Heat(volumetricHeat / 1000));

    internal static TimeCourse At(double celsius) => new TimeCourse.Constant(Celsius(celsius));

    internal static FaceCondition Gas(double coefficient, double celsius) => new FaceCondition.Convection(Coefficient(coefficient), At(celsius));

    internal static FaceCondition Held(double celsius) => new FaceCondition.Held(At(celsius));

    internal static FaceCondition Flux(double wattsPerM2) => new FaceCondition.Flux(HeatFlux.FromWattsPerSquareMeter(wattsPerM2));

    internal static FacePatch On(ThermalFace face, FaceCondition condition, double from = 0, double to = 1e9) =>
        new(face, Metre(from), Metre(to), condition);

    internal static Division Cells(double to, int cells, double ratio = 1) => new(Metre(to), cells, ratio);

    internal static PosedProbe Point(string name, double radius, double height) => new(name, Metre(radius), Metre(height));

    /// <summary>A slab along z from layers bottom to top: thickness, material and start of each.</summary>
    internal static PosedProblem Slab(
        IReadOnlyList<(double Thickness, PosedMaterial Material, double Start)> layers,
        IReadOnlyList<Division> divisions,
        double seconds,
        IReadOnlyList<PosedProbe> probes,
        params FacePatch[] patches)
    {
        List<PosedBlock> blocks = [];
        double bottom = 0;
        foreach ((double thickness, PosedMaterial material, double start) in layers)
        {
            blocks.Add(new PosedBlock(Length.Zero, Metre(1), Metre(bottom), Metre(bottom + thickness), material, Celsius(start)));
            bottom += thickness;
        }

        return new PosedProblem
        {
            InnerRadius = Length.Zero,
            OuterRadius = Metre(1),
            Height = Metre(bottom),
            Blocks = blocks,
            Stages = [new PosedStage(Seconds(seconds), patches)],
            RadialDivisions = [Cells(1, 1)],
            AxialDivisions = divisions,
            Probes = probes,
        };
    }

    /// <summary>A ring of one material.</summary>
    internal static PosedProblem Ring(
        double inner,
        double outer,
        double height,
        PosedMaterial material,
        double start,
        IReadOnlyList<Division> radial,
        IReadOnlyList<Division> axial,
        double seconds,
        IReadOnlyList<PosedProbe> probes,
        params FacePatch[] patches) => new()
        {
            InnerRadius = Metre(inner),
            OuterRadius = Metre(outer),
            Height = Metre(height),
            Blocks = [new PosedBlock(Metre(inner), Metre(outer), Length.Zero, Metre(height), material, Celsius(start))],
            Stages = [new PosedStage(Seconds(seconds), patches)],
            RadialDivisions = radial,
            AxialDivisions = axial,
            Probes = probes,
        };

    internal static SolverSettings Fine(double toleranceK = 0.01, double? firstStep = null) => new()
    {
        StepTolerance = TemperatureDelta.FromKelvins(toleranceK),
        FirstStep = firstStep is { } first ? Seconds(first) : null,
    };

    /// <summary>First time at which a history passes a temperature, in either direction [s].</summary>
    internal static double TimeAt(TemperatureHistory history, double celsius)
    {
        for (int i = 1; i < history.Seconds.Length; i++)
        {
            double before = history.Celsius[i - 1] - celsius;
            double after = history.Celsius[i] - celsius;
            if (before * after <= 0 && before != after)
            {
                return history.Seconds[i - 1] + ((history.Seconds[i] - history.Seconds[i - 1]) * before / (before - after));
            }
        }

        return double.NaN;
    }

    /// <summary>Value of a series at a time, linear between samples.</summary>
    internal static double SeriesAt(IReadOnlyList<double> seconds, IReadOnlyList<double> values, double time)
    {
        int i = 0;
        while (i + 2 < seconds.Count && seconds[i + 1] < time)
        {
            i++;
        }

        double share = (time - seconds[i]) / (seconds[i + 1] - seconds[i]);
        return values[i] + (share * (values[i + 1] - values[i]));
    }
}
