using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Calibrations;
using ReworkThermal.Data.Cases;
using ReworkThermal.Data.Limits;
using ReworkThermal.Data.Measurements;
using ReworkThermal.Data.Pinouts;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Store;
using ReworkThermal.Data.Tests.Calibrations;
using ReworkThermal.Data.Tests.Store;
using ReworkThermal.Data.Thermodynamics;
using ReworkThermal.Data.Wires;

namespace ReworkThermal.Data.Tests.Fuzzing;

/// <summary>A reader of text that strangers may have written, with good examples to spoil.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Examples">Good texts, each with the name of its file below the root; at least one.</param>
/// <param name="Read">Reads a text under a file name in a folder that is free to use.</param>
internal sealed record FuzzedReader(string Name, IReadOnlyList<(string File, string Text)> Examples, Action<string, string, TemporaryFolder> Read)
{
    private static readonly Lazy<Workshop> _workshop = new(() => Workshop.Load(DataRoot.BesideProgram));

    internal static IReadOnlyList<FuzzedReader> All { get; } =
    [
        new("alloys", Shipped("alloys/solders", "alloys/dilution"), (file, text, folder) => AlloyShelf.Load(WithOwn(file, text, folder))),
        new("thermodynamic systems", Shipped("alloys/thermodynamics"), ReadThermodynamics),
        new("profiles", Shipped("profiles/laminates", "profiles/boards", "profiles/joints", "profiles/irons", "profiles/air", "profiles/preheat", "profiles/contacts", "profiles/connectors", "profiles/metals", "profiles/rooms"), (file, text, folder) => ProfileLibrary.Load(WithOwn(file, text, folder))),
        new("removal methods", Shipped("profiles/removal"), (file, text, folder) => RemovalFiles.Load(WithOwn(file, text, folder))),
        new("limits", Shipped("profiles/limits"), ReadLimits),
        new("sources", [("profiles/sources.toml", Text("profiles/sources.toml"))], (file, text, folder) => WithOwn(file, text, folder).SourcesOf("profiles")),
        new("requests", Shipped("profiles/requests"), (file, text, folder) => PlanRequestFile.Read(Written(file, text, folder), _workshop.Value)),
        new("heat cases", Shipped("profiles/cases"), (file, text, folder) => HeatCaseFile.Read(Written(file, text, folder), () => _workshop.Value)),
        new("pin-outs", Shipped("profiles/pinouts"), (file, text, folder) => PinoutFile.Load(Written(file, text, folder))),
        new("wires", Shipped("profiles/wires"), (file, text, folder) => WireFiles.LoadKind(Written(file, text, folder))),
        new("pins as CSV", [("pins.csv", "number,name,row,position,duty,destination,bond,current_a,pair,state,note\n1,\"A \"\"x\"\"\",1,1,wired,U3.7,,0.5,D,sound,\n2,GND,1,2,ground,,,,,loose,\"two\nlines\"\n")], (file, text, _) => PinCsv.Read(text, file)),
        new("series as CSV", [("series.csv", "time_s,temperature_c\n0,24.1\n0.5,118.6\n1.0,181.2\n6.0,41.0\n")], (file, text, _) => SeriesCsv.Read(text, file)),
        new("jobs as JSON", [("jobs.json", ExportedJobs())], ReadJobs),
        new("calibrations", [("board.toml", BoardRecordWriter.TextOf(CalibrationFolderTests.Record()))], (file, text, folder) => BoardRecordReader.Read(Written(file, text, folder))),
        new("compositions", [("", "Sn96.5Ag3Cu0.5"), ("", "SnAg3Cu0.5"), ("", "In51Bi32.5Sn16.5"), ("", "Sn99.3Cu0.65Ni0.05")], (_, text, _) => ReadComposition(text)),
    ];

    private static IReadOnlyList<(string File, string Text)> Shipped(params string[] folders) =>
        [.. folders.SelectMany(DataRoot.BesideProgram.Files).Select(path => DataRoot.BesideProgram.Shown(path)).Select(name => (name, Text(name)))];

    private static string Text(string name) => File.ReadAllText(DataRoot.BesideProgram.File(name));

    private static string Written(string file, string text, TemporaryFolder folder)
    {
        string path = folder[file];
        _ = Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, System.Text.Encoding.UTF8.GetBytes(text));
        return path;
    }

    private static DataRoot WithOwn(string file, string text, TemporaryFolder folder)
    {
        _ = Written(file, text, folder);
        return new DataRoot(DataRoot.BesideProgram.Folder, folder.Root);
    }

    private static void ReadThermodynamics(string file, string text, TemporaryFolder folder)
    {
        foreach ((string name, string good) in Shipped("alloys/thermodynamics").Append(("alloys/sources.toml", Text("alloys/sources.toml"))))
        {
            _ = Written(name, good, folder);
        }

        _ = Written(file, text, folder);
        _ = ThermodynamicFiles.Load(folder["alloys/thermodynamics"]);
    }

    // A designation is typed by a person, so its refusal is an answer, not an exception; here it counts as the refusal that it is.
    private static void ReadComposition(string text)
    {
        if (AlloyDesignation.Read(text) is DesignationReading.Refused refused)
        {
            throw new DataFileException([new DataFileProblem("composition", 0, string.Empty, refused.Reason)]);
        }
    }

    private static void ReadJobs(string file, string text, TemporaryFolder folder)
    {
        using InMemoryJobStore store = new();
        _ = JobArchive.ImportFrom(store, Written(file, text, folder));
    }

    private static void ReadLimits(string file, string text, TemporaryFolder folder)
    {
        DataRoot root = WithOwn(file, text, folder);
        _ = LimitsFolder.Load(root);
        _ = Workshop.Load(root);
        _ = CheckLimitsFile.Load(root.File("profiles/limits/electrical-checks.toml"));
        _ = WireFiles.LoadLimits(root.File("profiles/limits/jumper-wires.toml"));
    }

    private static string ExportedJobs()
    {
        using InMemoryJobStore store = new();
        _ = SampleJobs.RecordEverything(SampleJobs.Desk(store));
        using MemoryStream stream = new();
        JobArchive.Export(store, null, stream);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
