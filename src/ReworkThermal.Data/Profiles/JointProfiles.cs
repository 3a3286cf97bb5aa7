using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Profiles;

/// <summary>Reads <c>profiles/joints</c>.</summary>
internal static class JointProfiles
{
    private static readonly Dictionary<string, bool> _kinds = new(StringComparer.Ordinal) { ["through"] = true, ["surface"] = false };

    private static readonly Dictionary<string, string> _shapes = new(StringComparer.Ordinal)
    {
        ["round"] = "round",
        ["rectangular"] = "rectangular",
        ["slot"] = "slot",
    };


    internal static JointProfile Joint(ProfileSource file, Func<string, string, Metal> metal, Func<string, string, Connector> connector)
    {
        file.Provenance();
        List<PlaneConnection> connections = [.. file.Tables("connection").Select(Connection)];
        Joint joint = file.Build(() =>
        {
            Joint made = file.Fields.OneOf("kind", _kinds) ? Through(file, connections, metal) : Surface(file, connections, metal);
            made.Check();
            return made;
        });
        Connector? body = file.Fields.TextOrNull("connector") is { } id ? connector(id, "connector") : null;
        return new JointProfile(joint, body, [.. file.Tables("neighbour").Select(Neighbour)]);
    }

    private static ThroughJoint Through(ProfileSource file, List<PlaneConnection> connections, Func<string, string, Metal> metal) => new()
    {
        Name = file.Fields.Text("name"),
        Connections = connections,
        Hole = Hole(file.Table("hole")),
        BarrelWall = file.Estimate("barrel_wall", UnitTable.Lengths),
        TopPadDiameter = file.Fields.Quantity("top_pad", UnitTable.Lengths),
        BottomPadDiameter = file.Fields.Quantity("bottom_pad", UnitTable.Lengths),
        InnerLandDiameter = file.Fields.Quantity("inner_land", UnitTable.Lengths),
        TopFilletHeight = file.Fields.Quantity("top_fillet", UnitTable.Lengths),
        BottomFilletHeight = file.Fields.Quantity("bottom_fillet", UnitTable.Lengths),
        Leg = file.Fields.Has("leg") ? Leg(file.Table("leg"), metal) : null,
    };

    private static SurfaceJoint Surface(ProfileSource file, List<PlaneConnection> connections, Func<string, string, Metal> metal)
    {
        ProfileSource pad = file.Table("pad");
        ProfileSource? vias = file.Fields.Has("vias") ? file.Table("vias") : null;
        Estimate<Length> none = new(Length.Zero, Length.Zero, Length.Zero, new Provenance("judgement, no source", EvidenceMark.Judgement));
        return new SurfaceJoint
        {
            Name = file.Fields.Text("name"),
            Connections = connections,
            PadLength = pad.Fields.Quantity("length", UnitTable.Lengths),
            PadWidth = pad.Fields.Quantity("width", UnitTable.Lengths),
            SolderThickness = file.Fields.Quantity("solder_thickness", UnitTable.Lengths),
            FootThickness = file.Fields.Quantity("foot_thickness", UnitTable.Lengths),
            FootMetal = file.Fields.TextOrNull("foot_metal") is { } id ? metal(id, "foot_metal") : null,
            Vias = vias?.Fields.Whole("count", 1, 200) ?? 0,
            ViaDiameter = vias?.Fields.Quantity("diameter", UnitTable.Lengths) ?? Length.Zero,
            ViaWall = vias?.Estimate("wall", UnitTable.Lengths) ?? none,
        };
    }

    private static HoleShape Hole(ProfileSource hole) => hole.Fields.OneOf("shape", _shapes) switch
    {
        "round" => new HoleShape.Round(hole.Fields.Quantity("diameter", UnitTable.Lengths)),
        "slot" => new HoleShape.Slot(hole.Fields.Quantity("length", UnitTable.Lengths), hole.Fields.Quantity("width", UnitTable.Lengths)),
        _ => throw hole.Fields.Wrong("shape", "of a hole must be round or slot"),
    };

    private static Leg Leg(ProfileSource leg, Func<string, string, Metal> metal) => new()
    {
        Shape = leg.Fields.OneOf("shape", _shapes) switch
        {
            "round" => new LegShape.Round(leg.Fields.Quantity("diameter", UnitTable.Lengths)),
            "rectangular" => new LegShape.Rectangular(leg.Fields.Quantity("width", UnitTable.Lengths), leg.Fields.Quantity("thickness", UnitTable.Lengths)),
            _ => new LegShape.Slot(leg.Fields.Quantity("width", UnitTable.Lengths), leg.Fields.Quantity("thickness", UnitTable.Lengths)),
        },
        Metal = metal(leg.Fields.Text("metal"), "leg.metal"),
        Protrusion = leg.Fields.Quantity("protrusion", UnitTable.Lengths),
        StandOff = leg.Fields.Quantity("stand_off", UnitTable.Lengths),
    };

    private static PlaneConnection Connection(ProfileSource connection) => connection.Build<PlaneConnection>(() => connection.Fields.Text("kind") switch
    {
        "direct" => new PlaneConnection.Direct(),
        "relieved" => new PlaneConnection.Relieved(
            connection.Fields.Whole("spokes", 1, 12),
            connection.Fields.Quantity("width", UnitTable.Lengths),
            connection.Fields.Quantity("length", UnitTable.Lengths)),
        "isolated" => new PlaneConnection.Isolated(connection.Fields.Quantity("antipad", UnitTable.Lengths)),
        string other => throw connection.Fields.Wrong("kind", $"must be one of direct, relieved, isolated; got '{BadValue.Shown(other)}'"),
    });

    private static Neighbour Neighbour(ProfileSource part)
    {
        part.Provenance();
        return part.Build(() => new Neighbour
        {
            Name = part.Fields.Text("name"),
            Kind = part.Fields.OneOf<NeighbourKind>("kind"),
            Distance = part.Fields.Quantity("distance", UnitTable.Lengths),
            Extent = part.Fields.Quantity("extent", UnitTable.Lengths),
            Side = part.Fields.OneOf<BoardSide>("side"),
            MostTemperature = part.EstimateOrNull("most_temperature", UnitTable.Temperatures),
            MostDifference = part.EstimateOrNull("most_difference", UnitTable.TemperatureDeltas),
            MostRate = part.EstimateOrNull("most_rate", UnitTable.TemperatureRates),
        });
    }
}
