using System.Globalization;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Cases;
using ReworkThermal.Data.Limits;
using ReworkThermal.Data.Pinouts;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Thermodynamics;
using ReworkThermal.Data.Wires;

namespace ReworkThermal.Data.Checks;

/// <summary>
/// Checks the data folders as they stand on disk: every file is valid TOML, every source it names is listed, and every file is
/// accepted by the reader of its folder. Nothing is computed here.
/// </summary>
public static class DataFolderCheck
{
    private const string Bibliographies = "sources.toml";

    /// <summary>The readers of the folders. Each reads all its files and reports every problem with its file.</summary>
    private static readonly IReadOnlyList<Action<DataRoot>> _readers =
    [
        root => AlloyShelf.Load(root),
        root => ThermodynamicFiles.Load(root),
        root => RemovalFiles.Load(root),
        root => ProfileLibrary.Load(root),
        root => LimitsFolder.Load(root),
        root => Workshop.Load(root),
        ReadBenchFiles,
        ReadUserFiles,
    ];

    /// <summary>Runs every check.</summary>
    /// <param name="root">The data folders.</param>
    /// <returns>One line per file in name order; a file with several problems has a line for each.</returns>
    public static IReadOnlyList<CheckLine> Run(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        List<CheckLine> complaints = [.. _readers.SelectMany(reader => Complaints(root, reader)), .. root.AllLeftOut.Select(p => Line(root, p))];
        complaints = [.. complaints.Distinct()];
        List<CheckLine> lines = [.. CheckFolder(root, "alloys", complaints), .. CheckFolder(root, "profiles", complaints)];
        return [.. lines, .. complaints.Where(c => lines.TrueForAll(l => l.File != c.File))];
    }

    private static IEnumerable<CheckLine> CheckFolder(DataRoot root, string folder, List<CheckLine> complaints)
    {
        if (!Directory.Exists(Path.Combine(root.Folder, folder)))
        {
            return [new CheckLine(folder, "folder", new CheckOutcome.Broken("there is no such folder"))];
        }

        Bibliography? bibliography = BibliographyOrNull(root, folder);
        return root.AllFiles(folder).SelectMany(file => CheckFile(root, file.Path, bibliography, complaints));
    }

    private static IEnumerable<CheckLine> CheckFile(DataRoot root, string path, Bibliography? bibliography, List<CheckLine> complaints)
    {
        string shown = root.Shown(path);
        List<CheckLine> own = [.. complaints.Where(c => c.File == shown)];
        if (own.Count > 0)
        {
            return own;
        }

        try
        {
            IReadOnlyList<(string Source, int Line)> sources = SourceKeys.In(path, shown);
            List<CheckLine> unlisted = [.. sources
                .Where(s => bibliography?.Cite(s.Source) is null)
                .Select(s => new CheckLine(shown, "sources", new CheckOutcome.Failed(string.Create(
                    CultureInfo.InvariantCulture, $"line {s.Line} names the source '{BadValue.Shown(s.Source)}', which {Bibliographies} of its folder does not list"))))];
            return unlisted.Count > 0
                ? unlisted
                : [new CheckLine(shown, "file", new CheckOutcome.Passed(string.Create(CultureInfo.InvariantCulture, $"sources named: {sources.Count}")))];
        }
        catch (DataFileException broken)
        {
            return Lines(root, broken);
        }
    }

    private static void ReadBenchFiles(DataRoot root) => ReadEach(
    [
        .. root.Files("profiles/pinouts").Select(path => (Action)(() => PinoutFile.Load(path))),
        .. root.Files("profiles/wires").Select(path => (Action)(() => WireFiles.LoadKind(path))),
        () => WireFiles.LoadLimits(root.File("profiles/limits/jumper-wires.toml")),
        () => CheckLimitsFile.Load(root.File("profiles/limits/electrical-checks.toml")),
    ]);

    private static void ReadUserFiles(DataRoot root)
    {
        Workshop workshop = Workshop.Load(root);
        ReadEach(
        [
            .. root.Files("profiles/requests").Select(path => (Action)(() => PlanRequestFile.Read(path, workshop))),
            .. root.Files("profiles/cases").Select(path => (Action)(() => HeatCaseFile.Read(path, () => workshop))),
        ]);
    }

    private static void ReadEach(IReadOnlyList<Action> reads)
    {
        List<DataFileProblem> problems = [];
        foreach (Action read in reads)
        {
            try
            {
                read();
            }
            catch (DataFileException broken)
            {
                problems.AddRange(broken.Problems);
            }
        }

        if (problems.Count > 0)
        {
            throw new DataFileException(problems);
        }
    }

    private static Bibliography? BibliographyOrNull(DataRoot root, string folder)
    {
        try
        {
            return root.SourcesOf(folder);
        }
        catch (DataFileException)
        {
            // The line of the file itself says what is wrong with it.
            return null;
        }
    }

    private static IEnumerable<CheckLine> Complaints(DataRoot root, Action<DataRoot> reader)
    {
        try
        {
            reader(root);
            return [];
        }
        catch (DataFileException broken)
        {
            return Lines(root, broken);
        }
    }

    private static IEnumerable<CheckLine> Lines(DataRoot root, DataFileException broken) => broken.Problems.Select(p => Line(root, p));

    private static CheckLine Line(DataRoot root, DataFileProblem problem) =>
        new(root.Shown(problem.File), "file", new CheckOutcome.Broken(PlaceOf(problem) + problem.Rule));

    private static string PlaceOf(DataFileProblem problem) => (problem.Line, problem.Field.Length) switch
    {
        (0, 0) => string.Empty,
        (0, _) => $"{problem.Field}: ",
        (_, 0) => string.Create(CultureInfo.InvariantCulture, $"line {problem.Line}: "),
        _ => string.Create(CultureInfo.InvariantCulture, $"line {problem.Line}, {problem.Field}: "),
    };
}
