using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A joint's thermal system with the tools that may come to it: the same for a planned run and for a live one.</summary>
internal sealed class JointBench
{
    // Heat takes about two seconds to the end of a header's pin: four pieces follow it.
    private const int PiecesBehind = 4;

    private readonly JointProblem _problem;
    private readonly List<TipSource> _tips;
    private readonly List<int> _faces = [];
    private readonly List<BraidLayer> _braids;
    private readonly List<int> _braidBodies = [];
    private readonly List<int> _behind = [];
    private readonly List<(int First, int Second, double Conductance)> _links = [];
    private readonly double _radiationShare;

    internal JointBench(JointProblem problem, IReadOnlyList<TipSource> tips, IReadOnlyList<JetSource> jets, double refinement)
    {
        _braids = [.. problem.Touches.Select(t => t.Braid).OfType<BraidLayer>().Distinct()];
        _problem = problem;
        _tips = [.. tips.Distinct()];
        _radiationShare = problem.Site.Board.Laminate.Emissivity.Central;
        JointGeometry geometry = JointGeometry.Of(problem.Site.Joint);
        IEnumerable<double> contacts = _tips.SelectMany(t => new[]
        {
            ContactRadius(geometry, t, BoardSide.Top),
            ContactRadius(geometry, t, BoardSide.Bottom),
        });

        double jetReach = jets.Select(j => j.Reach.Meters).DefaultIfEmpty(0).Max();
        IEnumerable<double> edges = problem.Preheat is { } below ? contacts.Append(below.Radius.Meters) : contacts;
        Mesh = new JointMesh(problem.Site, edges, jetReach, refinement);
        Mesh.FillSolder(ThermalMaterial.Of(problem.Solder));
        List<LumpedBody> bodies = [];
        Connector? connector = problem.Site.Connector;
        TimeCourse room = new TimeCourse.Constant(problem.Surroundings.Room);
        if (connector is not null)
        {
            bodies.Add(new LumpedBody
            {
                HeatCapacity = connector.HeatCapacity.Central.JoulesPerKelvin,
                Loss = connector.Loss.Central.WattsPerSquareMeterKelvin * connector.Surface.SquareMeters,
                Room = room,
                Channel = Channels.Connector,
                TemperatureK = problem.Start.Kelvins,
            });
        }

        AddMetalBehind(bodies, connector);
        foreach (TipSource tip in _tips)
        {
            _faces.Add(bodies.Count);
            bodies.Add(TipBody(tip, 0));
            bodies.Add(TipBody(tip, (double)tip.PowerLimit.Watts));
        }

        foreach (BraidLayer braid in _braids)
        {
            _braidBodies.Add(bodies.Count);
            bodies.Add(new LumpedBody
            {
                HeatCapacity = braid.HeatCapacity.JoulesPerKelvin,
                Loss = braid.LossWattsPerKelvin,
                Room = room,
                Channel = Channels.Braid,
                TemperatureK = problem.Surroundings.Room.Kelvins,
            });
        }

        double tail = Math.Max(geometry.TopPad, Math.Max(geometry.BottomPad, geometry.BarrelOuter));
        System = new ThermalSystem(Mesh.Grid, bodies, tail);
        Channels.Register(System, _braids.Count > 0);
        if (connector is not null)
        {
            LinkConnector(connector);
        }

        Lift();
    }

    internal JointMesh Mesh { get; }

    internal ThermalSystem System { get; }

    /// <summary>Index of the face body of the tip used last; -1 when there is none.</summary>
    internal int LastFace { get; private set; } = -1;

    /// <summary>Takes all tools away: only the room and the preheater act.</summary>
    internal void Lift()
    {
        Free();
        Room(null, BoardSide.Top, 0);
    }

    /// <summary>Puts tools on the joint.</summary>
    /// <param name="tip">Tip, or null.</param>
    /// <param name="jet">Jet, or null.</param>
    /// <param name="side">Face they work on.</param>
    /// <param name="nowS">Time at which they come down [s].</param>
    /// <param name="braid">Braid of one of the problem's touches between tip and joint, or null.</param>
    /// <returns>Index of the face body of the tip, or -1.</returns>
    internal int Apply(TipSource? tip, JetSource? jet, BoardSide side, double nowS, BraidLayer? braid = null)
    {
        Free();
        double contact = tip is null ? 0 : ContactRadius(Mesh.Geometry, tip, side);
        Room(jet, side, contact);
        ThermalFace face = side == BoardSide.Top ? ThermalFace.Top : ThermalFace.Bottom;
        if (jet is not null)
        {
            System.Surfaces.Loads.AddConvection(face, contact, jet.Reach.Meters, jet.At, new TimeCourse.Constant(jet.Gas), Channels.Jet);
        }

        if (tip is null)
        {
            return -1;
        }

        LastFace = _faces[_tips.IndexOf(tip)];
        System.ToolFace = LastFace;
        ContactGrowth growth = tip.Contact;
        if (braid is not null)
        {
            System.ToolFace = _braidBodies[_braids.IndexOf(braid)];
            System.BodyLinks.Add((LastFace, System.ToolFace, braid.FromTip.WattsPerSquareMeterKelvin * FaceOnBraid(tip, braid)));
            growth = braid.ToJoint;
        }

        System.Surfaces.Tool.Touch(face, contact, growth, nowS, SolderAtFace(side, contact), _problem.FlowTemperature.Kelvins);
        return LastFace;
    }

    private static double FaceOnBraid(TipSource tip, BraidLayer braid)
    {
        double radius = tip.FaceRadius.Meters;
        return Math.Min(Math.PI * radius * radius, 2 * radius * braid.Width.Meters);
    }

    // Nothing on the joint; every tip is its two halves again.
    private void Free()
    {
        System.ToolFace = -1;
        System.Surfaces.Clear();
        System.BodyLinks.Clear();
        for (int t = 0; t < _tips.Count; t++)
        {
            System.BodyLinks.Add((_faces[t], _faces[t] + 1, 1 / _tips[t].SensorToFaceKelvinPerWatt));
        }

        System.BodyLinks.AddRange(_links);
    }

    private void AddMetalBehind(List<LumpedBody> bodies, Connector? connector)
    {
        if (connector is not { MetalBehind.Meters: > 0 })
        {
            return;
        }

        Leg leg = ((ThroughJoint)_problem.Site.Joint).Leg!;
        double heat = leg.Metal.Density.Central.KilogramsPerCubicMeter * leg.Metal.SpecificHeat.Central.JoulesPerKilogramKelvin;
        for (int i = 0; i < PiecesBehind; i++)
        {
            _behind.Add(bodies.Count);
            bodies.Add(new LumpedBody
            {
                HeatCapacity = leg.Shape.Area.SquareMeters * connector.MetalBehind.Meters / PiecesBehind * heat,
                Channel = Channels.Connector,
                TemperatureK = _problem.Start.Kelvins,
            });
        }
    }

    // The solder that a tip's face meets: its own of the fillet under the face, or the outermost of the barrel where there is no fillet.
    private int[] SolderAtFace(BoardSide side, double contact)
    {
        bool top = side == BoardSide.Top || Mesh.Geometry.BottomPad == 0;
        int fillet = top ? Mesh.TopSolderRow : Mesh.BottomSolderRow;
        int row = fillet >= 0 ? fillet : top ? Mesh.LastBoardRow : Mesh.FirstBoardRow;
        HashSet<int> solder = [.. Mesh.SolderCells];
        return [.. Mesh.Ring(0, contact, row).Cells.Where(solder.Contains)];
    }

    private static LumpedBody TipBody(TipSource tip, double limit) => new()
    {
        HeatCapacity = tip.HeatCapacity.JoulesPerKelvin / 2,
        TemperatureK = tip.Set.Kelvins,
        SetK = tip.Set.Kelvins,
        HeaterLimitW = limit,
        Channel = Channels.Iron,
    };

    /// <summary>Radius that a tip wets on a side: that of its face or of the pad, whichever is smaller [m].</summary>
    internal static double ContactRadius(JointGeometry g, TipSource tip, BoardSide side)
    {
        double pad = side == BoardSide.Top || g.BottomPad == 0 ? g.TopPad : g.BottomPad;
        return Math.Min(pad, tip.FaceRadius.Meters);
    }

    // Convection and radiation to the room wherever no tool stands in the way.
    private void Room(JetSource? jet, BoardSide side, double contact)
    {
        TimeCourse room = new TimeCourse.Constant(_problem.Surroundings.Room);
        double rim = Mesh.Grid.Radial.Faces[^1];
        double top = _problem.Surroundings.TopConvection.Central.WattsPerSquareMeterKelvin;
        double bottom = _problem.Surroundings.BottomConvection.Central.WattsPerSquareMeterKelvin;
        double covered = Math.Max(contact, jet?.Reach.Meters ?? 0);
        double topFrom = side == BoardSide.Top ? Math.Min(covered, rim) : 0;
        double topBare = side == BoardSide.Top ? contact : 0;
        SurfaceLoads loads = System.Surfaces.Loads;
        loads.AddConvection(ThermalFace.Top, topFrom, rim, _ => top, room, Channels.RoomTop);
        loads.AddRadiation(ThermalFace.Top, topBare, rim, _radiationShare, room, Channels.RoomTop);
        double height = Mesh.Grid.Axial.Faces[^1];
        loads.AddConvection(ThermalFace.Rim, 0, height, _ => (top + bottom) / 2, room, Channels.Rim);
        loads.AddRadiation(ThermalFace.Rim, 0, height, _radiationShare, room, Channels.Rim);
        double bottomFrom = side == BoardSide.Bottom ? Math.Min(covered, rim) : 0;
        double bottomBare = side == BoardSide.Bottom ? contact : 0;
        if (_problem.Preheat is not { } heat)
        {
            loads.AddConvection(ThermalFace.Bottom, bottomFrom, rim, _ => bottom, room, Channels.RoomBottom);
            loads.AddRadiation(ThermalFace.Bottom, bottomBare, rim, _radiationShare, room, Channels.RoomBottom);
            return;
        }

        double disc = Math.Min(rim, heat.Radius.Meters);
        double share = heat.RoomConvectionShare;
        loads.AddConvection(ThermalFace.Bottom, bottomFrom, rim, r => r < disc ? bottom * share : bottom, room, Channels.RoomBottom);
        loads.AddRadiation(ThermalFace.Bottom, bottomBare, disc, _radiationShare * heat.RoomViewShare, room, Channels.RoomBottom);
        if (disc < rim)
        {
            loads.AddRadiation(ThermalFace.Bottom, disc, rim, _radiationShare, room, Channels.RoomBottom);
        }

        foreach (FaceCondition condition in heat.Conditions)
        {
            loads.Add(ThermalFace.Bottom, bottomBare, disc, condition, Channels.Preheater);
        }
    }

    // The leg's own metal behind the stand-off is a chain of bodies; the part's body hangs on the first of it, at the board.
    private void LinkConnector(Connector connector)
    {
        Leg leg = ((ThroughJoint)_problem.Site.Joint).Leg!;
        double perLength = leg.Metal.Conductivity.Central.WattsPerMeterKelvin * leg.Shape.Area.SquareMeters;
        double path = 1 / (connector.LegPath.Conductance(leg).Central * connector.LegPathFactor);
        double neck = leg.StandOff.Meters / perLength;
        if (_behind.Count == 0)
        {
            JoinLeg(0, 1 / (path + neck));
            return;
        }

        double piece = connector.MetalBehind.Meters / _behind.Count;
        JoinLeg(_behind[0], perLength / (leg.StandOff.Meters + (piece / 2)));
        _links.Add((0, _behind[0], 1 / path));
        for (int i = 1; i < _behind.Count; i++)
        {
            _links.Add((_behind[i - 1], _behind[i], perLength / piece));
        }
    }

    private void JoinLeg(int body, double conductance)
    {
        (int[] cells, double[] areas) = Mesh.Ring(0, Mesh.Geometry.CoreRadius, Mesh.Grid.Axial.Count - 1);
        double sum = areas.Sum();
        for (int i = 0; i < cells.Length; i++)
        {
            System.CellLinks.Add((body, cells[i], conductance * areas[i] / sum));
        }
    }

    /// <summary>Ledger channels of a joint run.</summary>
    private static class Channels
    {
        internal const int RoomTop = 0;
        internal const int RoomBottom = 1;
        internal const int Rim = 2;
        internal const int Preheater = 3;
        internal const int Jet = 4;
        internal const int Iron = 5;
        internal const int Connector = 6;
        internal const int Braid = 7;

        private static readonly string[] _names = ["room_top", "room_bottom", "room_rim", "preheater", "jet", "iron", "connector_loss", "braid_loss"];

        internal static void Register(ThermalSystem system, bool braid)
        {
            foreach (string name in braid ? _names : _names[..Braid])
            {
                system.Channel(name);
            }
        }
    }
}
