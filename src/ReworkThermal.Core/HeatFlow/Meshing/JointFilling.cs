using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Materials;

namespace ReworkThermal.Core.HeatFlow.Meshing;

/// <summary>Fills a joint's mesh: laminate, copper layers with their connections, barrel, pads, leg.</summary>
internal static class JointFilling
{
    internal static void Fill(JointMesh mesh, JointSite site)
    {
        ThermalMaterial copper = ThermalMaterial.Of(site.Board.Copper);
        ThermalMaterial laminate = ThermalMaterial.Of(site.Board.Laminate);
        CellGrid grid = mesh.Grid;
        JointGeometry g = mesh.Geometry;
        for (int j = mesh.FirstBoardRow; j <= mesh.LastBoardRow; j++)
        {
            FillRow(grid, j, 0, double.PositiveInfinity, laminate);
        }

        int layers = site.Board.StackUp.Copper.Count;
        for (int layer = 0; layer < layers; layer++)
        {
            FillLayer(mesh, site, layer, copper, laminate);
        }

        for (int j = mesh.FirstBoardRow; j <= mesh.LastBoardRow; j++)
        {
            FillRow(grid, j, g.SolderInBarrel ? g.BarrelInner : 0, g.BarrelOuter, copper);
        }

        if (site.Joint is ThroughJoint { Leg: { } leg })
        {
            FillLeg(mesh, leg);
        }

        if (site.Joint is SurfaceJoint { FootMetal: { } foot } && mesh.FootRow >= 0)
        {
            FillRow(grid, mesh.FootRow, 0, g.TopPad, ThermalMaterial.Of(foot));
        }
    }

    /// <summary>Outer radius of the copper that belongs to the joint on a layer: the pad outside, the land inside.</summary>
    internal static double LandRadius(JointGeometry g, int layer, int layers) =>
        layer == 0 ? g.TopPad : layer == layers - 1 ? Math.Max(g.BottomPad, g.BarrelOuter) : g.InnerLand;

    private static void FillLayer(JointMesh mesh, JointSite site, int layer, ThermalMaterial copper, ThermalMaterial laminate)
    {
        JointGeometry g = mesh.Geometry;
        int row = mesh.CopperRow[layer];
        int layers = site.Board.StackUp.Copper.Count;
        CopperLayer sheet = site.Board.StackUp.Copper[layer];
        FillRow(mesh.Grid, row, 0, double.PositiveInfinity, Sheet(sheet, copper, laminate));
        bool outer = layer == 0 || layer == layers - 1;
        double land = LandRadius(g, layer, layers);
        switch (site.Joint.Connections[layer])
        {
            case PlaneConnection.Isolated isolated:
                FillRow(mesh.Grid, row, 0, isolated.Antipad.Meters / 2, laminate);
                FillRow(mesh.Grid, row, 0, outer ? land : g.BarrelOuter, copper);
                break;
            case PlaneConnection.Relieved relieved when land > 0:
                FillRow(mesh.Grid, row, 0, land + relieved.Length.Meters, Spokes(relieved, land, copper, laminate));
                FillRow(mesh.Grid, row, 0, land, copper);
                break;
            default:
                FillRow(mesh.Grid, row, 0, outer ? land : g.BarrelOuter, copper);
                break;
        }
    }

    // A plane with holes conducts like its coverage, a little less for the detours round the holes: k c/(2 - c) for small round holes
    // in a sheet (Maxwell). Interrupted tracks hardly conduct along the board (Graebner and Azar 1997): laminate only.
    private static ThermalMaterial Sheet(CopperLayer sheet, ThermalMaterial copper, ThermalMaterial laminate)
    {
        double coverage = sheet.Coverage.DecimalFractions;
        double radial = sheet.Kind == CopperKind.Plane
            ? Math.Max(laminate.RadialConductivity, copper.RadialConductivity * coverage / (2 - coverage))
            : laminate.RadialConductivity;
        return laminate.SharedWith(copper, coverage, radial);
    }

    /// <summary>A ring with the conductance of the spokes and their mouths, n k t w / (L + mouths), and the laminate between them.</summary>
    internal static ThermalMaterial Spokes(PlaneConnection.Relieved relief, double land, ThermalMaterial copper, ThermalMaterial laminate)
    {
        double length = relief.Length.Meters;
        double width = relief.Spokes * relief.Width.Meters;
        double outer = land + length;
        double share = Math.Min(1, width * length / (Math.PI * ((outer * outer) - (land * land))));
        double effective = ReliefSpokes.EffectiveLengthM(relief.Spokes, relief.Width.Meters, length, land);
        double radial = Math.Min(copper.RadialConductivity, copper.RadialConductivity * width * Math.Log(outer / land) / (2 * Math.PI * effective));
        return laminate.SharedWith(copper, share, radial + ((1 - share) * laminate.RadialConductivity));
    }

    private static void FillLeg(JointMesh mesh, Leg leg)
    {
        ThermalMaterial metal = ThermalMaterial.Of(leg.Metal);
        double radius = mesh.Geometry.CoreRadius;
        for (int j = 0; j < mesh.Grid.Axial.Count; j++)
        {
            FillRow(mesh.Grid, j, 0, radius, metal);
        }

        Lump(mesh, metal, mesh.Grid.Axial.Count - 1, leg.StandOff.Meters - mesh.Geometry.TopSolder);
        Lump(mesh, metal, 0, leg.Protrusion.Meters - mesh.Geometry.BottomSolder);
    }

    // What sticks out beyond the fillet is short against its diffusion length within a step: its heat capacity joins the last cell.
    private static void Lump(JointMesh mesh, ThermalMaterial metal, int row, double lengthM)
    {
        for (int i = 0; i < mesh.Grid.Radial.Count && lengthM > 0; i++)
        {
            if (mesh.Grid.Radial.Centres[i] < mesh.Geometry.CoreRadius)
            {
                mesh.Grid.ExtraHeat[mesh.Grid.Index(i, row)] = mesh.Grid.RingArea(i) * lengthM * metal.VolumetricHeat;
            }
        }
    }

    private static void FillRow(CellGrid grid, int row, double innerM, double outerM, ThermalMaterial material)
    {
        for (int i = 0; i < grid.Radial.Count; i++)
        {
            if (grid.Radial.Centres[i] > innerM && grid.Radial.Centres[i] < outerM)
            {
                grid.Fill(i, row, material);
            }
        }
    }
}
