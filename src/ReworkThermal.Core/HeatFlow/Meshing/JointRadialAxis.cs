using ReworkThermal.Core.Boards;

namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>
/// The radial cells of a joint's mesh: faces wherever a wall, a pad, a clearance or a tool ends, cells that grow outwards from the barrel,
/// and even cells where a jet heats the board.
/// </summary>
/// <param name="geometry">The joint in radii.</param>
/// <param name="jetReachM">Radius up to which a jet heats the board; zero without one [m].</param>
/// <param name="refinement">Cells over those that the geometry asks for.</param>
internal sealed class JointRadialAxis(JointGeometry geometry, double jetReachM, double refinement)
{
    // Widths before refinement [m]: next to the barrel and within it; from there outwards each cell is wider by the growth.
    private const double FineM = 0.12e-3;
    private const double BarrelCellM = 0.25e-3;
    private const double Growth = 1.25;

    // Places closer to each other than this are one [m].
    private const double LeastCellM = 10e-6;

    // Rounding of radii that should be equal [m].
    private const double SlackM = 1e-12;

    // A copper plane under a jet is a fin of sqrt(k t / h), about 9 mm; its edge needs a few cells along that.
    private const double JetCellM = 2.5e-3;

    // Where growing cells reach the width that a jet asks for.
    private double EvenFromM => geometry.BarrelOuter + ((JetCellM - FineM) / (Growth - 1));

    /// <summary>Makes the axis.</summary>
    /// <param name="site">The joint on its board.</param>
    /// <param name="edgesM">Radii at which tools and preheater end: faces of the mesh [m].</param>
    internal MeshAxis Make(JointSite site, IEnumerable<double> edgesM)
    {
        List<double> places = [geometry.CoreRadius, geometry.BarrelInner, geometry.BarrelOuter, geometry.TopPad, geometry.BottomPad];
        double rim = site.Board.EquivalentRadius.Meters;
        int layers = site.Board.StackUp.Copper.Count;
        for (int layer = 0; layer < layers; layer++)
        {
            double land = JointFilling.LandRadius(geometry, layer, layers);
            switch (site.Joint.Connections[layer])
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

        places.AddRange(edgesM);
        if (jetReachM > 0)
        {
            places.Add(EvenFromM);
            places.Add(jetReachM);
        }

        List<double> faces = [0];
        double from = 0;
        foreach (double place in Kept(places, rim))
        {
            AddStretch(faces, from, place);
            from = place;
        }

        return new MeshAxis(faces.ToArray());
    }

    // Breakpoints in order; what lies closer than LeastCellM to the one before is the same place.
    private List<double> Kept(List<double> places, double rim)
    {
        List<double> kept = [];
        double[] walls = [geometry.CoreRadius, geometry.BarrelInner, geometry.BarrelOuter];
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

    private void AddStretch(List<double> faces, double from, double to)
    {
        if (to <= geometry.BarrelOuter + SlackM)
        {
            bool wall = geometry.BarrelOuter > geometry.BarrelInner && from >= geometry.BarrelInner - SlackM;
            int inside = wall ? 1 : Math.Max(2, (int)Math.Ceiling((to - from) / BarrelCellM));
            MeshAxis.AddCells(faces, from, to, wall ? 1 : (int)Math.Ceiling(inside * refinement), 1);
            return;
        }

        if (from >= EvenFromM - SlackM && to <= jetReachM + SlackM)
        {
            MeshAxis.AddCells(faces, from, to, (int)Math.Ceiling(refinement * (to - from) / JetCellM), 1);
            return;
        }

        double growth = (Growth - 1) / refinement;
        double first = (FineM / refinement) + (growth * Math.Max(0, from - geometry.BarrelOuter));
        double last = (FineM / refinement) + (growth * (to - geometry.BarrelOuter));
        int cells = Math.Max(1, (int)Math.Round(Math.Log(last / first) / Math.Log(1 + growth)));
        MeshAxis.AddCells(faces, from, to, cells, cells > 1 ? Math.Pow(last / first, 1.0 / cells) : 1);
    }
}
