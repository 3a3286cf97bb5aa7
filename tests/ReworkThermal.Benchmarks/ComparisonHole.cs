using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Posing;
using UnitsNet;

namespace ReworkThermal.Benchmarks;

/// <summary>
/// The plated hole on which this program and a general-purpose solver are compared: lead, solder, barrel, two pads and one plane in
/// 1.6 mm of epoxy-glass, iron on the upper pad, on the same 40 x 26 cells for both.
/// </summary>
internal static class ComparisonHole
{
    private const double Mm = 1e-3;

    /// <summary>Ring by ring: number of cells, ratio of their widths, outer radius [mm].</summary>
    internal static readonly (double To, int Cells, double Ratio)[] Radial = [(0.4, 4, 1), (0.5, 2, 1), (0.525, 1, 1), (1, 6, 1), (25, 27, 1.18)];

    /// <summary>Row by row from the bottom, likewise.</summary>
    internal static readonly (double To, int Cells, double Ratio)[] Axial = [(0.035, 1, 1), (0.7825, 12, 1), (0.8175, 1, 1), (1.565, 11, 1), (1.6, 1, 1)];

    /// <summary>Blocks: inner and outer radius, bottom and top [mm], k along r and z [W/mK], volumetric heat [J/m3K]; later ones override.</summary>
    internal static readonly double[][] Blocks =
    [
        [0, 25, 0, 1.6, 1.059, 0.343, 1850e3],
        [0.5, 25, 0.7825, 0.8175, 394, 394, 8920 * 386],
        [0, 1, 0, 0.035, 394, 394, 8920 * 386],
        [0, 1, 1.565, 1.6, 394, 394, 8920 * 386],
        [0.5, 0.525, 0, 1.6, 394, 394, 8920 * 386],
        [0.4, 0.5, 0, 1.6, 60, 60, 7400 * 230],
        [0, 0.4, 0, 1.6, 394, 394, 8920 * 386],
    ];

    /// <summary>Watched cells: place along r and along z, from the axis and from the bottom.</summary>
    internal static readonly (string Name, int Radial, int Axial)[] Watched =
        [("lead_top", 0, 25), ("solder_bottom", 5, 0), ("plane", 30, 13), ("laminate", 20, 20)];

    internal static PosedProblem Problem(double seconds)
    {
        FaceCondition air = Convection(10, 25);
        return new PosedProblem
        {
            InnerRadius = Length.Zero,
            OuterRadius = At(25),
            Height = At(1.6),
            Blocks = [.. Blocks.Select(Block)],
            Stages =
            [
                new PosedStage(
                    Duration.FromSeconds(seconds),
                    [
                        new FacePatch(ThermalFace.Top, At(0), At(1), Convection(2e4, 350)),
                        new FacePatch(ThermalFace.Top, At(1), At(25), air),
                        new FacePatch(ThermalFace.Bottom, At(0), At(25), air),
                    ]),
            ],
            RadialDivisions = [.. Radial.Select(d => new Division(At(d.To), d.Cells, d.Ratio))],
            AxialDivisions = [.. Axial.Select(d => new Division(At(d.To), d.Cells, d.Ratio))],
            Probes = [.. Watched.Select(w => new PosedProbe(w.Name, At(Centre(Radial, w.Radial)), At(Centre(Axial, w.Axial))))],
        };
    }

    // Middle of a cell [mm]: widths in each stretch grow by a constant ratio.
    private static double Centre((double To, int Cells, double Ratio)[] divisions, int cell)
    {
        double from = 0;
        foreach ((double to, int cells, double ratio) in divisions)
        {
            double sum = Math.Abs(ratio - 1) < 1e-9 ? cells : (Math.Pow(ratio, cells) - 1) / (ratio - 1);
            double width = (to - from) / sum;
            for (int c = 0; c < cells; c++, cell--)
            {
                if (cell == 0)
                {
                    return from + (width / 2);
                }

                from += width;
                width *= ratio;
            }

            from = to;
        }

        throw new ArgumentOutOfRangeException(nameof(cell));
    }

    private static Length At(double millimetres) => Length.FromMeters(millimetres * Mm);

    private static PosedBlock Block(double[] b) => new(
        At(b[0]),
        At(b[1]),
        At(b[2]),
        At(b[3]),
        new PosedMaterial.Solid(
            ThermalConductivity.FromWattsPerMeterKelvin(b[4]),
            ThermalConductivity.FromWattsPerMeterKelvin(b[5]),
            Density.FromKilogramsPerCubicMeter(1000),
            SpecificEntropy.FromJoulesPerKilogramKelvin(b[6] / 1000)),
        Temperature.FromDegreesCelsius(25));

    private static FaceCondition.Convection Convection(double coefficient, double celsius) =>
        new(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(coefficient), new TimeCourse.Constant(Temperature.FromDegreesCelsius(celsius)));
}
