using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Meshing;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>The probes every joint run has.</summary>
internal static class JointProbes
{
    private static readonly double[] _planeMm = [5, 10, 20];

    internal static List<Probe> Of(JointProblem problem, JointBench bench, BoardSide near)
    {
        JointMesh mesh = bench.Mesh;
        JointGeometry g = mesh.Geometry;
        near = g.BottomPad > 0 ? near : BoardSide.Top;
        List<Probe> probes = [];
        if (bench.LastFace >= 0)
        {
            probes.Add(new Probe.Tool(ProbeNames.Tip, bench, 0));
            probes.Add(new Probe.Tool(ProbeNames.TipSensor, bench, 1));
        }

        probes.Add(Pad(ProbeNames.NearPad, mesh, near));
        if (g.BottomPad > 0)
        {
            probes.Add(Pad(ProbeNames.FarPad, mesh, near == BoardSide.Top ? BoardSide.Bottom : BoardSide.Top));
        }

        probes.Add(new Probe.Coldest(ProbeNames.ColdestSolder, mesh.SolderCells));
        probes.Add(Knee(mesh, near));
        int row = PlaneRow(problem.Site, mesh);
        double rim = mesh.Grid.Radial.Faces[^1];
        double height = mesh.Grid.Axial.Centres[row];
        foreach (double mm in _planeMm.Where(mm => mm * 1e-3 < rim))
        {
            probes.Add(new Probe.Point(ProbeNames.Plane(mm), mm * 1e-3, height));
        }

        double face = mesh.Grid.Axial.Faces[mesh.LastBoardRow + 1];
        probes.Add(new Probe.Point(ProbeNames.Board, (g.TopPad + rim) / 2, face));
        if (problem.Site.Connector is not null)
        {
            probes.Add(new Probe.Body(ProbeNames.Connector, 0));
        }

        foreach (Neighbour neighbour in problem.Site.Neighbours)
        {
            double z = neighbour.Side == BoardSide.Top ? face : mesh.Grid.Axial.Faces[mesh.FirstBoardRow];
            probes.Add(new Probe.Point(ProbeNames.Neighbour(neighbour.Name), neighbour.Distance.Meters, z));
            probes.Add(new Probe.Point(ProbeNames.NeighbourFarEdge(neighbour.Name), (neighbour.Distance + neighbour.Extent).Meters, z));
        }

        return probes;
    }

    // A pad is so thin and conducts so well that its cells have the temperature of the interface under them.
    private static Probe.Mean Pad(string name, JointMesh mesh, BoardSide side)
    {
        JointGeometry g = mesh.Geometry;
        int row = side == BoardSide.Top ? mesh.CopperRow[0] : mesh.CopperRow[^1];
        double edge = side == BoardSide.Top ? g.TopPad : g.BottomPad;
        (int[] cells, double[] areas) = mesh.Ring(g.BarrelOuter, edge, row);
        return new Probe.Mean(name, cells, areas);
    }

    // A fixed point in the laminate, so that it does not move with the mesh: 50 um from barrel and pad.
    private static Probe.Point Knee(JointMesh mesh, BoardSide side)
    {
        const double depthM = 50e-6;
        double[] faces = mesh.Grid.Axial.Faces;
        double height = side == BoardSide.Top ? faces[mesh.CopperRow[0]] - depthM : faces[mesh.CopperRow[^1] + 1] + depthM;
        return new Probe.Point(ProbeNames.KneeLaminate, mesh.Geometry.BarrelOuter + depthM, height);
    }

    // The first plane from the top; the middle of the board when there is none.
    private static int PlaneRow(JointSite site, JointMesh mesh)
    {
        IReadOnlyList<CopperLayer> copper = site.Board.StackUp.Copper;
        for (int layer = 0; layer < copper.Count; layer++)
        {
            if (copper[layer].Kind == CopperKind.Plane)
            {
                return mesh.CopperRow[layer];
            }
        }

        return (mesh.FirstBoardRow + mesh.LastBoardRow) / 2;
    }
}
