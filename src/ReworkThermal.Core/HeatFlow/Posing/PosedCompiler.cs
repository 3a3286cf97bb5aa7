using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Posing;

/// <summary>Turns a posed problem into a thermal system, and refuses what cannot be.</summary>
internal static class PosedCompiler
{
    // Cells over the whole length where the program chooses them, and the least over any stretch of it.
    private const int CellsPerLength = 40;
    private const int LeastCellsPerStretch = 4;

    internal static ThermalSystem Compile(PosedProblem problem, SolverSettings settings)
    {
        double inner = problem.InnerRadius.Meters;
        double outer = problem.OuterRadius.Meters;
        double height = problem.Height.Meters;
        Require(inner >= 0 && outer > inner && double.IsFinite(outer), "the outer radius must be above the inner one, which must not be negative");
        Require(height > 0 && double.IsFinite(height), "the height must be above zero");
        Require(problem.Stages.Count > 0 && problem.Stages.All(s => s.Span.Seconds > 0 && double.IsFinite(s.Span.Seconds)), "at least one stage is needed, each with a span above zero");
        List<double> radialBreaks = Breaks(inner, outer, problem.Blocks.SelectMany(b => new[] { b.Inner.Meters, b.Outer.Meters }));
        List<double> axialBreaks = Breaks(0, height, problem.Blocks.SelectMany(b => new[] { b.Bottom.Meters, b.Top.Meters }).Concat(problem.Contacts.Select(c => c.Height.Meters)));
        CellGrid grid = new(
            Axis(inner, problem.RadialDivisions, radialBreaks, settings.Refinement),
            Axis(0, problem.AxialDivisions, axialBreaks, settings.Refinement));
        foreach (PosedBlock block in problem.Blocks)
        {
            grid.Fill(block.Inner.Meters, block.Outer.Meters, block.Bottom.Meters, block.Top.Meters, block.Material.Compile());
        }

        for (int p = 0; p < grid.Count; p++)
        {
            Require(grid.MaterialAt(p) is not null, "the blocks must fill the whole body; a part of it has no material");
        }

        foreach (PosedContact contact in problem.Contacts)
        {
            Place(grid, contact);
        }

        return new ThermalSystem(grid, [], 0);
    }

    internal static double StartAt(PosedProblem problem, double radiusM, double heightM)
    {
        double kelvin = double.NaN;
        foreach (PosedBlock block in problem.Blocks)
        {
            if (radiusM > block.Inner.Meters && radiusM < block.Outer.Meters && heightM > block.Bottom.Meters && heightM < block.Top.Meters)
            {
                kelvin = block.Start.Kelvins;
            }
        }

        return kelvin;
    }

    internal static void Apply(ThermalSystem system, IReadOnlyList<FacePatch> patches)
    {
        system.Surfaces.Clear();
        foreach (FacePatch patch in patches)
        {
            double from = patch.From.Meters;
            double to = patch.To.Meters;
            Require(from >= 0 && to > from, "a face patch must end beyond where it begins");
            int channel = system.Channel(patch.Face.ToString().ToLowerInvariant());
            Check(patch.Condition);
            system.Surfaces.Loads.Add(patch.Face, from, to, patch.Condition, channel);
        }
    }

    private static void Check(FaceCondition condition)
    {
        if (condition is FaceCondition.Convection convection)
        {
            double coefficient = convection.Coefficient.WattsPerSquareMeterKelvin;
            Require(coefficient >= 0 && double.IsFinite(coefficient), "a heat-transfer coefficient must not be negative");
        }

        Require(condition is not FaceCondition.Radiation { ExchangeFactor: not (>= 0 and <= 1) }, "an exchange factor lies between 0 and 1");
    }

    private static MeshAxis Axis(double start, IReadOnlyList<Division>? divisions, List<double> breaks, double refinement)
    {
        List<double> faces = [start];
        if (divisions is null)
        {
            double whole = breaks[^1] - breaks[0];
            for (int s = 0; s + 1 < breaks.Count; s++)
            {
                int cells = (int)Math.Ceiling(refinement * Math.Max(LeastCellsPerStretch, CellsPerLength * (breaks[s + 1] - breaks[s]) / whole));
                MeshAxis.AddCells(faces, breaks[s], breaks[s + 1], cells, 1);
            }

            return new MeshAxis([.. faces]);
        }

        foreach (Division division in divisions)
        {
            double to = division.To.Meters;
            Require(to > faces[^1] && division.Cells >= 1 && division.Ratio > 0, "each division must end beyond the one before it, with at least one cell and a ratio above zero");
            int cells = (int)Math.Ceiling(refinement * division.Cells);
            MeshAxis.AddCells(faces, faces[^1], to, cells, Math.Pow(division.Ratio, (double)division.Cells / cells));
        }

        Require(Math.Abs(faces[^1] - breaks[^1]) < 1e-9 * breaks[^1], string.Create(
            CultureInfo.InvariantCulture,
            $"the divisions end at {faces[^1]} m, but the body ends at {breaks[^1]} m"));
        foreach (double place in breaks)
        {
            Require(faces.Exists(f => Math.Abs(f - place) < 1e-9 * breaks[^1]), string.Create(
                CultureInfo.InvariantCulture,
                $"no division ends at {place} m, where a material or a contact ends"));
        }

        return new MeshAxis([.. faces]);
    }

    private static List<double> Breaks(double from, double to, IEnumerable<double> places)
    {
        List<double> breaks = [from];
        foreach (double place in places.Append(to).Order())
        {
            if (place - breaks[^1] > 1e-9 * to && place <= to * (1 + 1e-9))
            {
                breaks.Add(place);
            }
        }

        return breaks;
    }

    private static void Place(CellGrid grid, PosedContact contact)
    {
        double height = contact.Height.Meters;
        int face = Array.FindIndex(grid.Axial.Faces, f => Math.Abs(f - height) < 1e-9 * grid.Axial.Faces[^1]);
        double conductance = contact.Conductance.WattsPerSquareMeterKelvin;
        Require(face > 0 && face < grid.Axial.Count, "a contact plane must lie inside the body");
        Require(conductance > 0, "a contact conductance must be above zero");
        for (int i = 0; i < grid.Radial.Count; i++)
        {
            grid.ContactOnTop[grid.Index(i, face - 1)] = conductance;
        }
    }

    private static void Require(bool condition, string rule)
    {
        if (!condition)
        {
            throw new ImpossibleGeometryException(rule);
        }
    }
}
