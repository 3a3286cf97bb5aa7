using System.Collections.Concurrent;

namespace ReworkThermal.Data;

/// <summary>
/// Where the data files are: those that came with the program, and those of the user's own folder, which has the same layout. A file of
/// the own folder stands in for the shipped file of the same folder and name; other files are added.
/// </summary>
/// <param name="folder">Folder that holds the shipped <c>alloys</c> and <c>profiles</c>.</param>
/// <param name="own">The user's folder with the same layout; null for none. It need not exist.</param>
public sealed class DataRoot(string folder, string? own = null)
{
    private const string Sources = "sources.toml";

    private readonly ConcurrentDictionary<string, OwnFile> _used = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, IReadOnlyList<DataFileProblem>> _leftOut = new(StringComparer.Ordinal);

    /// <summary>The data that came with the program, beside its binary, whatever the working directory is.</summary>
    public static DataRoot BesideProgram { get; } = new(AppContext.BaseDirectory);

    /// <summary>Folder that holds the shipped <c>alloys</c> and <c>profiles</c>.</summary>
    public string Folder => folder;

    /// <summary>Folder of the shipped solders, dilution alloys and thermodynamic systems.</summary>
    public string Alloys => Path.Combine(folder, "alloys");

    /// <summary>Folder of the shipped laminates, boards, joints, tools and limits.</summary>
    public string Profiles => Path.Combine(folder, "profiles");

    /// <summary>Files of the user's own folder that have been handed out so far, in order of name: what an answer may rest on.</summary>
    public IReadOnlyList<OwnFile> UsedOwnFiles => [.. _used.Values.OrderBy(f => f.Name, StringComparer.Ordinal)];

    /// <summary>
    /// The first complaint of each file that was left out, in order of path: an own file that is not in order must not stop what does not
    /// need it, and what needs it will not find it.
    /// </summary>
    public IReadOnlyList<DataFileProblem> LeftOut => [.. AllLeftOut.DistinctBy(p => p.File)];

    /// <summary>Every complaint of the files that were left out.</summary>
    internal IEnumerable<DataFileProblem> AllLeftOut => _leftOut.OrderBy(f => f.Key, StringComparer.Ordinal).SelectMany(f => f.Value);

    /// <summary>The file to read for a name.</summary>
    /// <param name="name">Name below the root, with '/' between folders, such as <c>alloys/wire.toml</c>.</param>
    /// <returns>Path of the user's own file if there is one, else of the shipped one, which need not exist.</returns>
    public string File(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return OwnPathOrNull(name) is { } path ? Used(path, name) : Path.Combine(folder, Local(name));
    }

    /// <summary>The TOML files of a folder, the user's own among them, in ordinal order of their names.</summary>
    /// <param name="name">Folder below the root, with '/' between folders, such as <c>profiles/boards</c>.</param>
    /// <returns>Full paths, without files that were left out; empty when neither side has such a folder.</returns>
    public IReadOnlyList<string> Files(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return [.. NamesIn(folder, name).Union(own is null ? [] : NamesIn(own, name), StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(n => File($"{name}/{n}"))
            .Where(path => !_leftOut.ContainsKey(path))];
    }

    /// <summary>The TOML files of a folder and of all folders in it.</summary>
    /// <param name="name">Folder below the root, such as <c>profiles</c>.</param>
    /// <returns>Names below the root and full paths, in ordinal order of the names.</returns>
    public IReadOnlyList<(string Name, string Path)> AllFiles(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return [.. Below(folder, name).Union(own is null ? [] : Below(own, name), StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(n => (Name: n, Path: File(n)))
            .Where(f => !_leftOut.ContainsKey(f.Path))];
    }

    /// <summary>Full paths of all data files, shipped and the user's own; naming them uses none.</summary>
    public IReadOnlyList<string> AllPaths =>
        [.. PathsBelow(folder), .. own is null ? [] : PathsBelow(own)];

    /// <summary>The bibliography of a data folder: the shipped one, with the entries of the user's own beside it.</summary>
    /// <param name="name"><c>alloys</c> or <c>profiles</c>.</param>
    /// <returns>The bibliography.</returns>
    /// <exception cref="DataFileException">A file is missing or not in order.</exception>
    public Bibliography SourcesOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        Bibliography shipped = Bibliography.Load(Path.Combine(folder, name, Sources));
        if (OwnPathOrNull($"{name}/{Sources}") is not { } path)
        {
            return shipped;
        }

        try
        {
            return shipped.With(Bibliography.Load(path));
        }
        catch (DataFileException broken) when (LeavesOut(path, broken))
        {
            return shipped;
        }
    }

    /// <summary>Leaves a file of a folder out that cannot be used: the user's own, or one that leans on such a file.</summary>
    /// <param name="path">Its full path.</param>
    /// <param name="broken">What is wrong with it.</param>
    /// <returns>Whether it is left out; if not, the complaint stands.</returns>
    public bool LeavesOut(string path, DataFileException broken)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(broken);
        bool leaves = IsOwn(path) || !_leftOut.IsEmpty;
        if (leaves)
        {
            _leftOut[path] = broken.Problems;
            foreach ((string name, OwnFile _) in _used.Where(u => u.Value.Path == path))
            {
                _ = _used.TryRemove(name, out _);
            }
        }

        return leaves;
    }

    /// <summary>How a file is named in messages: shipped ones below the root, the user's own by their full path.</summary>
    /// <param name="path">Full path, or a name that is below the root already.</param>
    /// <returns>The name, with '/' between folders.</returns>
    public string Shown(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return (IsOwn(path) || !Path.IsPathRooted(path) ? path : Path.GetRelativePath(folder, path)).Replace('\\', '/');
    }

    private static string Local(string name) => name.Replace('/', Path.DirectorySeparatorChar);

    private static IEnumerable<string> NamesIn(string root, string name)
    {
        string path = Path.Combine(root, Local(name));
        return Directory.Exists(path) ? Directory.EnumerateFileSystemEntries(path, "*.toml").Select(f => Path.GetFileName(f)) : [];
    }

    private static IEnumerable<string> Below(string root, string name)
    {
        string path = Path.Combine(root, Local(name));
        return Directory.Exists(path)
            ? Directory.EnumerateFiles(path, "*.toml", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(root, f).Replace('\\', '/'))
            : [];
    }

    private static IEnumerable<string> PathsBelow(string root) =>
        Below(root, "alloys").Concat(Below(root, "profiles")).Select(name => Path.Combine(root, Local(name)));

    /// <summary>Whether a path lies in the user's own folder.</summary>
    /// <param name="path">Full path.</param>
    internal bool IsOwn(string path) => own is not null && path.StartsWith(own + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private string? OwnPathOrNull(string name) =>
        own is not null && Path.Combine(own, Local(name)) is string path && Path.Exists(path)
            ? path
            : null;

    private string Used(string path, string name)
    {
        _ = _used.TryAdd(name, new OwnFile(name, path, System.IO.File.Exists(Path.Combine(folder, Local(name)))));
        return path;
    }
}
