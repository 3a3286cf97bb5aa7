using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Solving;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A joint's thermal system with the tools that may come to it: the same for a planned run and for a live one.</summary>
internal sealed class JointBench
{
    private readonly JointProblem _problem;
    private readonly List<TipSource> _tips;
    private readonly List<int> _faces = [];
    private readonly double _radiationShare;

    internal JointBench(JointProblem problem, IReadOnlyList<TipSource> tips, IReadOnlyList<JetSource> jets, double refinement)
    {
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

        foreach (TipSource tip in _tips)
        {
            _faces.Add(bodies.Count);
            bodies.Add(TipBody(tip, 0));
            bodies.Add(TipBody(tip, (double)tip.PowerLimit.Watts));
        }

        double tail = Math.Max(geometry.TopPad, Math.Max(geometry.BottomPad, geometry.BarrelOuter));
        System = new ThermalSystem(Mesh.Grid, bodies, tail);
        Channels.Register(System);
        for (int t = 0; t < _tips.Count; t++)
        {
            System.BodyLinks.Add((_faces[t], _faces[t] + 1, 1 / _tips[t].SensorToFaceKelvinPerWatt));
        }

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
        System.ToolFace = -1;
        System.Surfaces.Clear();
        Room(null, BoardSide.Top, 0);
    }

    /// <summary>Puts tools on the joint.</summary>
    /// <returns>Index of the face body of the tip, or -1.</returns>
    internal int Apply(TipSource? tip, JetSource? jet, BoardSide side)
    {
        System.ToolFace = -1;
        System.Surfaces.Clear();
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
        System.Surfaces.Touch(face, contact, tip.Contact.WattsPerSquareMeterKelvin);
        return LastFace;
    }

    private static LumpedBody TipBody(TipSource tip, double limit) => new()
    {
        HeatCapacity = tip.HeatCapacity.JoulesPerKelvin / 2,
        TemperatureK = tip.Set.Kelvins,
        SetK = tip.Set.Kelvins,
        HeaterLimitW = limit,
        Channel = Channels.Iron,
    };

    private static double ContactRadius(JointGeometry g, TipSource tip, BoardSide side)
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

    private void LinkConnector(Connector connector)
    {
        Leg leg = ((ThroughJoint)_problem.Site.Joint).Leg!;
        double area = leg.Shape.Area.SquareMeters;
        double neck = leg.StandOff.Meters / (leg.Metal.Conductivity.Central.WattsPerMeterKelvin * area);
        double conductance = 1 / ((1 / connector.LegConductanceWattsPerKelvin.Central) + neck);
        (int[] cells, double[] areas) = Mesh.Ring(0, Mesh.Geometry.CoreRadius, Mesh.Grid.Axial.Count - 1);
        double sum = areas.Sum();
        for (int i = 0; i < cells.Length; i++)
        {
            System.CellLinks.Add((0, cells[i], conductance * areas[i] / sum));
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

        private static readonly string[] _names = ["room_top", "room_bottom", "room_rim", "preheater", "jet", "iron", "connector_loss"];

        internal static void Register(ThermalSystem system)
        {
            foreach (string name in _names)
            {
                system.Channel(name);
            }
        }
    }
}
