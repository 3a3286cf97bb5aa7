using ReworkThermal.Data.Store;

namespace ReworkThermal.Data;

/// <summary>
/// The one way in which a file is written for somebody: whole beside its place, forced to the disk, then moved there. Nothing that is
/// there is replaced unasked; asked, only a plain file is; and never one that this run of the program keeps or reads, through whatever
/// name, link or hard link.
/// </summary>
/// <param name="kept">Files that may not be written, whether they are there yet or not: the job store and what belongs to it, and what was read.</param>
public sealed class OutputFiles(IEnumerable<string> kept)
{
    private static readonly StringComparison _names = OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
    private readonly List<Spot> _kept = [.. kept.Select(Spot.Of)];

    /// <summary>Writes one file.</summary>
    /// <param name="path">Where it shall be.</param>
    /// <param name="force">Whether a plain file that is there may be replaced.</param>
    /// <param name="write">Writes the content to the path it is given, where no file is yet.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    public string? Write(string path, bool force, Action<string> write) => WriteAll([(path, write)], force);

    /// <summary>Writes files that belong together: all, or none when one is refused. Each is drafted beside its place before the first takes it.</summary>
    /// <param name="files">Paths, and what writes the content to a path where no file is yet.</param>
    /// <param name="force">Whether plain files that are there may be replaced.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    public string? WriteAll(IReadOnlyList<(string Path, Action<string> Write)> files, bool force)
    {
        ArgumentNullException.ThrowIfNull(files);
        List<string> drafts = [];
        string at = string.Empty;
        try
        {
            List<Spot> spots = [];
            foreach ((string path, Action<string> _) in files)
            {
                at = path;
                Spot spot = Spot.Of(path);
                if (Objection(spot, path, force) is { } objection)
                {
                    return objection;
                }

                if (spots.Exists(spot.IsSameAs))
                {
                    return $"'{path}' is named for two files; give each a name of its own.";
                }

                spots.Add(spot);
            }

            foreach ((string path, Action<string> write) in files)
            {
                at = path;
                drafts.Add(path + "." + Path.GetRandomFileName() + ".part");
                write(drafts[^1]);
                Settle(drafts[^1], path);
            }

            for (int i = 0; i < files.Count; i++)
            {
                if (BelongsToAnotherStore(files[i].Path, drafts[i]))
                {
                    return $"'{files[i].Path}' is a job store or the log of one, which only a backup replaces; it was left as it is. Name another file.";
                }
            }

            for (int i = 0; i < files.Count; i++)
            {
                at = files[i].Path;
                File.Move(drafts[i], at, overwrite: force);
            }

            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return !force && File.Exists(at) ? Exists(at) : $"'{at}' cannot be written: {problem.Message}";
        }
        finally
        {
            foreach (string draft in drafts.Where(File.Exists))
            {
                File.Delete(draft);
            }
        }
    }

    private string? Objection(Spot spot, string path, bool force)
    {
        FileAttributes? there = AttributesOf(path);
        return _kept.Exists(spot.IsSameAs) ? $"'{path}' is the job store of this run, belongs to it, or is read by this command; it was left as it is. Name another file."
            : there is { } a && a.HasFlag(FileAttributes.Directory) && !a.HasFlag(FileAttributes.ReparsePoint) ? CannotWrite(path, "it is a folder, not a file")
            : there is null && spot.Folder is null ? CannotWrite(path, $"there is no folder '{Path.GetDirectoryName(Path.GetFullPath(path))}'")
            : there is null ? null
            : !force ? Exists(path)
            : there.Value.HasFlag(FileAttributes.ReparsePoint) ? CannotWrite(path, "it is a link; name the file itself.")
            : spot.Itself is { IsRegular: false } ? CannotWrite(path, "it is a pipe, a device or a socket, and only a plain file is replaced.")
            : null;
    }

    // A store that this run does not use is somebody's work all the same.
    private static bool BelongsToAnotherStore(string path, string draft) =>
        (StoreFile.IsStore(path) && !StoreFile.IsStore(draft)) || StoreFile.IsLog(path)
        || (StoreFile.StoreOf(path) is { } store && StoreFile.IsStore(store));

    // What is under the very name: a link is not followed, and one that leads nowhere is there too.
    private static FileAttributes? AttributesOf(string path)
    {
        try
        {
            return File.GetAttributes(path);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    // On the disk before it takes its place, and as private as what it replaces.
    private static void Settle(string draft, string path)
    {
        using FileStream written = new(draft, FileMode.Open, FileAccess.ReadWrite);
        written.Flush(flushToDisk: true);
        if (!OperatingSystem.IsWindows() && File.Exists(path))
        {
            File.SetUnixFileMode(draft, File.GetUnixFileMode(path));
        }
    }

    private static string Exists(string path) => $"'{path}' exists already and was left as it is; choose another name, or use --force to replace it.";

    private static string CannotWrite(string path, string why) => $"'{path}' cannot be written: {why}";

    /// <summary>A place in the file system: what is there, and the folder and name under which something would be.</summary>
    private sealed record Spot(FileMark? Itself, FileMark? Folder, string FullFolder, string Name)
    {
        internal static Spot Of(string path)
        {
            string full = Path.GetFullPath(path);
            string folder = Path.GetDirectoryName(full) ?? full;
            return new Spot(FileMark.Of(full), FileMark.Of(folder), folder, Path.GetFileName(full));
        }

        internal bool IsSameAs(Spot other) =>
            (Itself is { } here && other.Itself is { } there && here.IsSameAs(there))
            || (string.Equals(Name, other.Name, _names) && IsSameFolder(other));

        private bool IsSameFolder(Spot other) =>
            string.Equals(FullFolder, other.FullFolder, _names)
            || (!OperatingSystem.IsWindows() && Folder is { } here && other.Folder is { } there && here.IsSameAs(there));
    }
}
