using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Materials;

namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>The mesh of a joint on its board: which rows are which layer, which cells are solder, leg, pads.</summary>
internal sealed class JointMesh
{
    // Height of a cell of dielectric before refinement [m].
    private const double DielectricCellM = 0.15e-3;

    private readonly JointSite _site;
    private readonly double _refinement;
    private readonly List<double> _heights = [0];
    private readonly int[] _copperRow;

    /// <summary>Makes the mesh.</summary>
    /// <param name="site">The joint on its board.</param>
    /// <param name="edgesM">Radii at which tools and preheater end: faces of the mesh [m].</param>
    /// <param name="jetReachM">Radius up to which a jet heats the board; zero without one [m].</param>
    /// <param name="refinement">Cells per direction over those that the geometry asks for.</param>
    internal JointMesh(JointSite site, IEnumerable<double> edgesM, double jetReachM, double refinement)
    {
        _site = site;
        _refinement = refinement;
        Geometry = JointGeometry.Of(site.Joint);
        _copperRow = new int[site.Board.StackUp.Copper.Count];
        StackRows();
        Grid = new CellGrid(new JointRadialAxis(Geometry, jetReachM, refinement).Make(site, edgesM), new MeshAxis(_heights.ToArray()));
        JointFilling.Fill(this, site);
    }

    internal JointGeometry Geometry { get; }

    internal CellGrid Grid { get; }

    /// <summary>Solder cells by position; empty until a solder is filled in.</summary>
    internal int[] SolderCells { get; private set; } = [];

    /// <summary>Row of the top fillet or pad solder, or -1.</summary>
    internal int TopSolderRow { get; private set; } = -1;

    /// <summary>Row of a surface joint's foot, or -1.</summary>
    internal int FootRow { get; private set; } = -1;

    /// <summary>Row of the bottom fillet, or -1.</summary>
    internal int BottomSolderRow { get; private set; } = -1;

    /// <summary>Row of each copper layer, top to bottom.</summary>
    internal ReadOnlySpan<int> CopperRow => _copperRow;

    /// <summary>First row of the board itself.</summary>
    internal int FirstBoardRow { get; private set; }

    /// <summary>Last row of the board itself.</summary>
    internal int LastBoardRow { get; private set; }

    /// <summary>Volumes of the solder cells [m3].</summary>
    internal double[] SolderVolumes()
    {
        double[] volumes = new double[Grid.Count];
        for (int i = 0; i < Grid.Radial.Count; i++)
        {
            for (int j = 0; j < Grid.Axial.Count; j++)
            {
                volumes[Grid.Index(i, j)] = Grid.Volume(i, j);
            }
        }

        return [.. SolderCells.Select(p => volumes[p])];
    }

    /// <summary>Fills the places of solder.</summary>
    internal void FillSolder(ThermalMaterial solder)
    {
        for (int i = 0; i < Grid.Radial.Count; i++)
        {
            double r = Grid.Radial.Centres[i];
            for (int j = 0; j < Grid.Axial.Count; j++)
            {
                bool barrel = Geometry.SolderInBarrel && r > Geometry.CoreRadius && r < Geometry.BarrelInner && j >= FirstBoardRow && j <= LastBoardRow;
                bool overLeg = Geometry.SolderInBarrel && r < Geometry.CoreRadius;
                bool top = j == TopSolderRow && r < Geometry.TopPad && !overLeg;
                bool bottom = j == BottomSolderRow && r < Geometry.BottomPad && !overLeg;
                if (barrel || top || bottom)
                {
                    Grid.Fill(i, j, solder);
                }
            }
        }

        SolderCells = [.. Enumerable.Range(0, Grid.Count).Where(p => Grid.MaterialAt(p)?.Melts == true)];
    }

    /// <summary>Cells of a ring in a row with their areas.</summary>
    internal (int[] Cells, double[] Areas) Ring(double innerM, double outerM, int row)
    {
        List<int> cells = [];
        List<double> areas = [];
        for (int i = 0; i < Grid.Radial.Count; i++)
        {
            if (Grid.Radial.Centres[i] > innerM && Grid.Radial.Centres[i] < outerM && Grid.MaterialAt(i, row) is not null)
            {
                cells.Add(Grid.Index(i, row));
                areas.Add(Grid.RingArea(i));
            }
        }

        return ([.. cells], [.. areas]);
    }

    private void StackRows()
    {
        StackUp stack = _site.Board.StackUp;
        if (Geometry.BottomSolder > 0)
        {
            BottomSolderRow = 0;
            AddRow(Geometry.BottomSolder, 1);
        }

        FirstBoardRow = _heights.Count - 1;
        int layers = stack.Copper.Count;
        if (layers == 1)
        {
            AddDielectric(stack.Dielectrics[0].Meters);
        }

        for (int layer = layers - 1; layer >= 0; layer--)
        {
            _copperRow[layer] = _heights.Count - 1;
            AddRow(stack.Copper[layer].Thickness.Central.Meters, 1);
            if (layer > 0)
            {
                AddDielectric(stack.Dielectrics[layer - 1].Meters);
            }
        }

        LastBoardRow = _heights.Count - 2;
        if (Geometry.TopSolder > 0)
        {
            TopSolderRow = _heights.Count - 1;
            AddRow(Geometry.TopSolder, 1);
        }

        if (Geometry.TopFoot > 0)
        {
            FootRow = _heights.Count - 1;
            AddRow(Geometry.TopFoot, 1);
        }
    }

    private void AddDielectric(double thickness) => AddRow(thickness, Math.Max(1, (int)Math.Ceiling(_refinement * Math.Round(thickness / DielectricCellM + 0.3))));

    private void AddRow(double thickness, int cells) => MeshAxis.AddCells(_heights, _heights[^1], _heights[^1] + thickness, cells, 1);
}
