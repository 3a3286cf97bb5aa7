using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>The outer surface of one cell.</summary>
/// <param name="Face">Face of the body it belongs to.</param>
/// <param name="Cell">Cell behind it.</param>
/// <param name="Area">Area [m2].</param>
/// <param name="Conductance">Conductance of the half cell behind it [W/K]; of the solid for a cell that melts.</param>
/// <param name="From">Begin of the stretch it covers: a radius or a height [m].</param>
/// <param name="To">End of that stretch [m].</param>
internal sealed record CellSurface(ThermalFace Face, int Cell, double Area, double Conductance, double From, double To)
{
    /// <summary>Middle of the stretch it covers: a radius or a height [m].</summary>
    internal double Middle => (From + To) / 2;

    /// <summary>Area of it that lies on part of a face [m2]; zero when none does.</summary>
    /// <param name="face">The face.</param>
    /// <param name="from">Begin of the part: a radius or a height [m].</param>
    /// <param name="to">End of the part [m].</param>
    internal double AreaWithin(ThermalFace face, double from, double to)
    {
        double low = Math.Max(from, From);
        double high = Math.Min(to, To);
        if (Face != face || high <= low)
        {
            return 0;
        }

        bool flat = face is ThermalFace.Top or ThermalFace.Bottom;
        double share = flat
            ? ((high * high) - (low * low)) / ((To * To) - (From * From))
            : (high - low) / (To - From);
        return Area * share;
    }

    /// <summary>All outer surfaces of a grid. Steps between rings of different height count as insulated.</summary>
    internal static IEnumerable<CellSurface> Of(CellGrid grid)
    {
        for (int i = 0; i < grid.Radial.Count; i++)
        {
            int top = grid.TopCell(i);
            int bottom = grid.BottomCell(i);
            if (top >= 0)
            {
                yield return Horizontal(grid, i, top, ThermalFace.Top);
                yield return Horizontal(grid, i, bottom, ThermalFace.Bottom);
            }
        }

        for (int j = 0; j < grid.Axial.Count; j++)
        {
            if (grid.MaterialAt(grid.Radial.Count - 1, j) is { } rim)
            {
                yield return Vertical(grid, grid.Radial.Count - 1, j, ThermalFace.Rim, rim);
            }

            if (grid.Radial.Faces[0] > 0 && grid.MaterialAt(0, j) is { } bore)
            {
                yield return Vertical(grid, 0, j, ThermalFace.Bore, bore);
            }
        }
    }

    private static CellSurface Horizontal(CellGrid grid, int radial, int axial, ThermalFace face)
    {
        double area = grid.RingArea(radial);
        double conductance = 2 * grid.MaterialAt(radial, axial)!.AxialConductivity * area / grid.Axial.Width(axial);
        return new CellSurface(face, grid.Index(radial, axial), area, conductance, grid.Radial.Faces[radial], grid.Radial.Faces[radial + 1]);
    }

    private static CellSurface Vertical(CellGrid grid, int radial, int axial, ThermalFace face, ThermalMaterial material)
    {
        double edge = grid.Radial.Faces[face == ThermalFace.Rim ? radial + 1 : radial];
        double height = grid.Axial.Width(axial);
        double spread = Math.Abs(Math.Log(edge / grid.Radial.Centres[radial]));
        double conductance = 2 * Math.PI * height * material.RadialConductivity / spread;
        return new CellSurface(face, grid.Index(radial, axial), 2 * Math.PI * edge * height, conductance, grid.Axial.Faces[axial], grid.Axial.Faces[axial + 1]);
    }
}
