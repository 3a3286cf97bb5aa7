using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tools;

namespace ReworkThermal.Data.Profiles;

/// <summary>
/// All profiles of a data folder by identifier (the file's name without its ending). Start reading this room here.
/// </summary>
public sealed class ProfileLibrary
{
    private readonly Dictionary<string, Laminate> _laminates = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Metal> _metals = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Board> _boards = new(StringComparer.Ordinal);
    private readonly Dictionary<string, JointProfile> _joints = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Connector> _connectors = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Iron> _irons = new(StringComparer.Ordinal);
    private readonly Dictionary<ContactState, TipContact> _contacts = [];
    private readonly Dictionary<string, AirNozzle> _nozzles = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Preheater> _preheaters = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Surroundings> _rooms = new(StringComparer.Ordinal);

    private ProfileLibrary()
    {
    }

    /// <summary>Laminates.</summary>
    public IReadOnlyDictionary<string, Laminate> Laminates => _laminates;

    /// <summary>Boards.</summary>
    public IReadOnlyDictionary<string, Board> Boards => _boards;

    /// <summary>Joints with their surroundings.</summary>
    public IReadOnlyDictionary<string, JointProfile> Joints => _joints;

    /// <summary>Connector bodies.</summary>
    public IReadOnlyDictionary<string, Connector> Connectors => _connectors;

    /// <summary>Irons by class of tip.</summary>
    public IReadOnlyDictionary<string, Iron> Irons => _irons;

    /// <summary>Tip contacts by state; all three states are present.</summary>
    public IReadOnlyDictionary<ContactState, TipContact> Contacts => _contacts;

    /// <summary>Hot-air nozzles.</summary>
    public IReadOnlyDictionary<string, AirNozzle> Nozzles => _nozzles;

    /// <summary>Preheaters.</summary>
    public IReadOnlyDictionary<string, Preheater> Preheaters => _preheaters;

    /// <summary>Rooms: air temperature and convection.</summary>
    public IReadOnlyDictionary<string, Surroundings> Rooms => _rooms;

    /// <summary>Number of profiles read.</summary>
    public int Count => _laminates.Count + _metals.Count + _boards.Count + _joints.Count + _connectors.Count + _irons.Count + _contacts.Count + _nozzles.Count + _preheaters.Count + _rooms.Count;

    /// <summary>Reads every profile.</summary>
    /// <param name="root">The data folder.</param>
    /// <returns>The library.</returns>
    /// <exception cref="DataFileException">One or more files are not in order; all of them are reported together.</exception>
    public static ProfileLibrary Load(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        ProfileLibrary library = new();
        ProfileFolderReader reader = new(root, root.SourcesOf("profiles"));
        reader.ReadAll("metals", MaterialProfiles.Metal, (id, it) => library._metals[id] = it);
        reader.ReadAll("laminates", MaterialProfiles.Laminate, (id, it) => library._laminates[id] = it);
        reader.ReadAll("connectors", MaterialProfiles.Connector, (id, it) => library._connectors[id] = it);
        reader.ReadAll("boards", file => BoardProfiles.Board(file, Pick(file, library._laminates), Pick(file, library._metals)), (id, it) => library._boards[id] = it);
        reader.ReadAll("joints", file => JointProfiles.Joint(file, Pick(file, library._metals), Pick(file, library._connectors)), (id, it) => library._joints[id] = it);
        reader.ReadAll("irons", ToolProfiles.Iron, (id, it) => library._irons[id] = it);
        reader.ReadAll("contacts", ToolProfiles.Contact, (_, it) => library._contacts[it.State] = it);
        reader.ReadAll("air", ToolProfiles.Nozzle, (id, it) => library._nozzles[id] = it);
        reader.ReadAll("preheat", ToolProfiles.Preheater, (id, it) => library._preheaters[id] = it);
        reader.ReadAll("rooms", ToolProfiles.Room, (id, it) => library._rooms[id] = it);
        reader.Require(library._contacts.Count == Enum.GetValues<ContactState>().Length, "contacts", "must hold the states bare, tinned and flooded");
        reader.Finish();
        return library;
    }

    /// <summary>A look-up that blames the asking file when the name is unknown.</summary>
    internal static Func<string, string, T> Pick<T>(ProfileSource file, IReadOnlyDictionary<string, T> known) => (id, field) =>
        known.TryGetValue(id, out T? found)
            ? found
            : throw file.Fields.Wrong(field.Split('.')[0], $"names '{BadValue.Shown(id)}', which is not a profile; known: {string.Join(", ", known.Keys.Order(StringComparer.Ordinal))}");
}
