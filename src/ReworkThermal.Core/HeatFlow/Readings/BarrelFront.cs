using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>How far through the barrel the solder has flowed, counted from the face that the tool touches.</summary>
internal sealed class BarrelFront
{
    private readonly List<(int[] Cells, double HeightM)> _rows = [];
    private readonly double _lengthM;
    private readonly double _flowK;

    internal BarrelFront(JointMesh mesh, BoardSide touched, double flowK)
    {
        _flowK = flowK;
        HashSet<int> solder = [.. mesh.SolderCells];
        for (int j = mesh.FirstBoardRow; j <= mesh.LastBoardRow; j++)
        {
            int[] cells = [.. Enumerable.Range(0, mesh.Grid.Radial.Count).Select(i => mesh.Grid.Index(i, j)).Where(solder.Contains)];
            if (cells.Length > 0)
            {
                _rows.Add((cells, mesh.Grid.Axial.Width(j)));
            }
        }

        // Rows count upwards from the bottom face.
        if (touched == BoardSide.Top)
        {
            _rows.Reverse();
        }

        _lengthM = _rows.Sum(r => r.HeightM);
    }

    /// <summary>Share of the barrel's length in which all solder, without a gap from the touched face on, has flow temperature, 0 to 1.</summary>
    internal double ShareOf(ThermalSystem system)
    {
        ReadOnlySpan<double> kelvin = system.CellTemperaturesK;
        double flowed = 0;
        foreach ((int[] cells, double height) in _rows)
        {
            foreach (int cell in cells)
            {
                if (kelvin[cell] < _flowK)
                {
                    return flowed / _lengthM;
                }
            }

            flowed += height;
        }

        return _rows.Count > 0 ? 1 : 0;
    }
}
