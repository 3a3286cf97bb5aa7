using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>Faces and centres of the cells along one direction [m].</summary>
internal sealed class MeshAxis
{
    internal MeshAxis(ReadOnlySpan<double> faces)
    {
        Faces = faces.ToArray();
        Centres = new double[Faces.Length - 1];
        for (int i = 0; i < Centres.Length; i++)
        {
            Centres[i] = (Faces[i] + Faces[i + 1]) / 2;
        }
    }

    /// <summary>Face positions, rising; one more than cells.</summary>
    internal double[] Faces { get; }

    /// <summary>Midpoints between faces.</summary>
    internal double[] Centres { get; }

    /// <summary>Number of cells.</summary>
    internal int Count => Centres.Length;

    /// <summary>Width of a cell.</summary>
    internal double Width(int cell) => Faces[cell + 1] - Faces[cell];

    /// <summary>Cell that holds a position; the nearest end cell beyond the ends.</summary>
    internal int CellAt(double position)
    {
        int found = Array.BinarySearch(Faces, position);
        int cell = found >= 0 ? found : ~found - 1;
        return Math.Clamp(cell, 0, Count - 1);
    }

    /// <summary>Adds the faces of cells whose widths grow by a constant ratio.</summary>
    internal static void AddCells(List<double> faces, double from, double to, int cells, double ratio)
    {
        double sum = Math.Abs(ratio - 1) < 1e-9 ? cells : (Math.Pow(ratio, cells) - 1) / (ratio - 1);
        double width = (to - from) / sum;
        double position = from;
        for (int c = 0; c < cells - 1; c++)
        {
            position += width;
            width *= ratio;
            faces.Add(position);
        }

        faces.Add(to);
    }
}

/// <summary>Cells of a stretch of one direction.</summary>
/// <param name="To">End of the stretch; it begins where the one before it ends.</param>
/// <param name="Cells">Number of cells, at least one.</param>
/// <param name="Ratio">Width of each cell over that of the one before it, above zero; 1 for equal widths.</param>
public sealed record Division(Length To, int Cells, double Ratio = 1);
