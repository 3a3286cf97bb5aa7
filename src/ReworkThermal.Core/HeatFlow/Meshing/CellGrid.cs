using ReworkThermal.Core.HeatFlow.Materials;

namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>
/// Cells of an axisymmetric body: what is where, and in which order the unknowns stand. The direction with fewer cells runs
/// fastest, so that the matrix has the narrowest band; radii run from the rim to the axis, so that the joint is the tail of the matrix.
/// </summary>
internal sealed class CellGrid
{
    private readonly ThermalMaterial?[] _materials;

    internal CellGrid(MeshAxis radial, MeshAxis axial)
    {
        Radial = radial;
        Axial = axial;
        RadialMajor = radial.Count >= axial.Count;
        Minor = Math.Min(radial.Count, axial.Count);
        Count = radial.Count * axial.Count;
        _materials = new ThermalMaterial?[Count];
        ExtraHeat = new double[Count];
        ContactOnTop = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            ContactOnTop[i] = double.PositiveInfinity;
        }
    }

    /// <summary>Cells along r.</summary>
    internal MeshAxis Radial { get; }

    /// <summary>Cells along z, bottom to top.</summary>
    internal MeshAxis Axial { get; }

    /// <summary>Whether columns of equal r stand together.</summary>
    internal bool RadialMajor { get; }

    /// <summary>Number of cells in the shorter direction: the half bandwidth.</summary>
    internal int Minor { get; }

    /// <summary>Number of cells, empty ones included.</summary>
    internal int Count { get; }

    /// <summary>Heat capacity lumped onto a cell [J/K], for example of a leg's free length.</summary>
    internal double[] ExtraHeat { get; }

    /// <summary>Contact conductance of a cell's upper face [W/m2K]; infinite for a perfect joint.</summary>
    internal double[] ContactOnTop { get; }

    /// <summary>Position of a cell in the vectors.</summary>
    internal int Index(int radial, int axial)
    {
        int ring = Radial.Count - 1 - radial;
        return RadialMajor ? (ring * Axial.Count) + axial : (axial * Radial.Count) + ring;
    }

    /// <summary>Material of a cell; null where there is none.</summary>
    internal ThermalMaterial? MaterialAt(int radial, int axial) => _materials[Index(radial, axial)];

    /// <summary>Material by vector position.</summary>
    internal ThermalMaterial? MaterialAt(int index) => _materials[index];

    /// <summary>Fills one cell.</summary>
    internal void Fill(int radial, int axial, ThermalMaterial? material) => _materials[Index(radial, axial)] = material;

    /// <summary>Fills all cells whose centres lie in a ring.</summary>
    internal void Fill(double innerM, double outerM, double bottomM, double topM, ThermalMaterial? material)
    {
        for (int i = 0; i < Radial.Count; i++)
        {
            for (int j = 0; j < Axial.Count; j++)
            {
                if (Radial.Centres[i] > innerM && Radial.Centres[i] < outerM && Axial.Centres[j] > bottomM && Axial.Centres[j] < topM)
                {
                    Fill(i, j, material);
                }
            }
        }
    }

    /// <summary>Area of the horizontal faces of a ring [m2].</summary>
    internal double RingArea(int radial)
    {
        double inner = Radial.Faces[radial];
        double outer = Radial.Faces[radial + 1];
        return Math.PI * ((outer * outer) - (inner * inner));
    }

    /// <summary>Volume of a cell [m3].</summary>
    internal double Volume(int radial, int axial) => RingArea(radial) * Axial.Width(axial);

    /// <summary>Uppermost filled cell of a ring, or -1.</summary>
    internal int TopCell(int radial)
    {
        int j = Axial.Count - 1;
        while (j >= 0 && MaterialAt(radial, j) is null)
        {
            j--;
        }

        return j;
    }

    /// <summary>Lowest filled cell of a ring, or the number of cells.</summary>
    internal int BottomCell(int radial)
    {
        int j = 0;
        while (j < Axial.Count && MaterialAt(radial, j) is null)
        {
            j++;
        }

        return j;
    }
}
