using ReworkThermal.Core.Boards;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>The mesh of a joint on its board: which rows are which layer, which cells are solder, leg, pads.</summary>
internal sealed class JointMesh
{
    private const double FineM = 0.12e-3;
    private const double Growth = 1.25;
    private const double DielectricCellM = 0.15e-3;
    private const double LeastCellM = 10e-6;

    // A copper plane under a jet is a fin of sqrt(k t / h), about 9 mm; its edge needs a few cells along that.
    private const double JetCellM = 2.5e-3;

    private readonly JointSite _site;
    private readonly double _refinement;
    private readonly double _jetReachM;
    private readonly List<double> _heights = [0];
    private readonly int[] _copperRow;

    /// <summary>Makes the mesh.</summary>
    /// <param name="site">The joint on its board.</param>
    /// <param name="edgesM">Radii at which tools and preheater end: faces of the mesh [m].</param>
    /// <param name="jetReachM">Radius up to which a jet heats the board; zero without one [m].</param>
    /// <param name="refinement">Cells per direction over those that the geometry asks for.</param>
    internal JointMesh(JointSite site, IEnumerable<double> edgesM, double jetReachM, double refinement)
    {
        _jetReachM = jetReachM;
        _site = site;
        _refinement = refinement;
        Geometry = JointGeometry.Of(site.Joint);
        _copperRow = new int[site.Board.StackUp.Copper.Count];
        StackRows();
        Grid = new CellGrid(RadialAxis(edgesM), new MeshAxis(_heights.ToArray()));
        JointFilling.Fill(this, site);
        SolderCells = [.. Enumerable.Range(0, Grid.Count).Where(p => Grid.MaterialAt(p)?.Melts == true)];
    }

    internal JointGeometry Geometry { get; }

    internal CellGrid Grid { get; }

    /// <summary>Solder cells by position; empty until a solder is filled in.</summary>
    internal int[] SolderCells { get; private set; }

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

    private MeshAxis RadialAxis(IEnumerable<double> edges)
    {
        JointGeometry g = Geometry;
        List<double> places = [g.CoreRadius, g.BarrelInner, g.BarrelOuter, g.TopPad, g.BottomPad];
        double rim = _site.Board.EquivalentRadius.Meters;
        for (int layer = 0; layer < _copperRow.Length; layer++)
        {
            double land = JointFilling.LandRadius(g, layer, _copperRow.Length);
            switch (_site.Joint.Connections[layer])
            {
                case PlaneConnection.Relieved relieved:
                    places.Add(land);
                    places.Add(land + relieved.Length.Meters);
                    break;
                case PlaneConnection.Isolated isolated:
                    places.Add(isolated.Antipad.Meters / 2);
                    break;
                default:
                    break;
            }
        }

        places.AddRange(edges);
        if (_jetReachM > 0)
        {
            places.Add(EvenFromM);
            places.Add(_jetReachM);
        }

        List<double> faces = [0];
        double from = 0;
        foreach (double place in Kept(places, g, rim))
        {
            AddStretch(faces, from, place);
            from = place;
        }

        return new MeshAxis(faces.ToArray());
    }

    // Breakpoints in order; what lies closer than 10 um to the one before is the same place.
    private static List<double> Kept(List<double> places, JointGeometry g, double rim)
    {
        List<double> kept = [];
        double[] walls = [g.CoreRadius, g.BarrelInner, g.BarrelOuter];
        foreach (double place in places.Where(p => p > 0 && p < rim).Append(rim).Order())
        {
            if (kept.Count == 0 || place - kept[^1] >= LeastCellM)
            {
                kept.Add(place);
            }
            else if (walls.Contains(place))
            {
                kept[^1] = place;
            }
        }

        return kept;
    }

    // Where growing cells reach the width that a jet asks for.
    private double EvenFromM => Geometry.BarrelOuter + ((JetCellM - FineM) / (Growth - 1));

    private void AddStretch(List<double> faces, double from, double to)
    {
        JointGeometry g = Geometry;
        double slack = 1e-12;
        if (to <= g.BarrelOuter + slack)
        {
            bool wall = g.BarrelOuter > g.BarrelInner && from >= g.BarrelInner - slack;
            int inside = wall ? 1 : Math.Max(2, (int)Math.Ceiling((to - from) / 0.25e-3));
            MeshAxis.AddCells(faces, from, to, wall ? 1 : (int)Math.Ceiling(inside * _refinement), 1);
            return;
        }

        if (from >= EvenFromM - slack && to <= _jetReachM + slack)
        {
            MeshAxis.AddCells(faces, from, to, (int)Math.Ceiling(_refinement * (to - from) / JetCellM), 1);
            return;
        }

        double growth = (Growth - 1) / _refinement;
        double first = (FineM / _refinement) + (growth * Math.Max(0, from - g.BarrelOuter));
        double last = (FineM / _refinement) + (growth * (to - g.BarrelOuter));
        int cells = Math.Max(1, (int)Math.Round(Math.Log(last / first) / Math.Log(1 + growth)));
        MeshAxis.AddCells(faces, from, to, cells, cells > 1 ? Math.Pow(last / first, 1.0 / cells) : 1);
    }
}
