using ReworkThermal.App.Wording;
using ReworkThermal.Data;

namespace ReworkThermal.App.Commands;

/// <summary>Files that the user names: read whole, written whole or not at all, and never over a file that is there unless it is wanted.</summary>
internal static class UserFiles
{
    /// <summary>Reads a text file.</summary>
    /// <param name="path">Its path.</param>
    /// <returns>The text.</returns>
    /// <exception cref="DataFileException">It cannot be read.</exception>
    internal static string Read(string path)
    {
        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new DataFileException([new DataFileProblem(path, 0, string.Empty, Directory.Exists(path) ? Refusals.IsFolder : problem is FileNotFoundException or DirectoryNotFoundException ? Refusals.NoSuchFile : problem.Message)]);
        }
    }

    /// <summary>Writes a file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="content">Its content.</param>
    /// <param name="force">Whether a file that is there may be replaced.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? Write(string path, byte[] content, bool force) => WriteAll([(path, content)], force);

    /// <summary>Writes files that belong together: all, or none when one is refused. Each is drafted beside its place before the first takes it.</summary>
    /// <param name="files">Paths and contents.</param>
    /// <param name="force">Whether files that are there may be replaced.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? WriteAll(IReadOnlyList<(string Path, byte[] Content)> files, bool force)
    {
        Dictionary<string, string> drafts = new(StringComparer.Ordinal);
        string at = string.Empty;
        try
        {
            foreach ((string path, byte[] content) in files)
            {
                at = path;
                if (!drafts.TryAdd(Path.GetFullPath(path), path + "." + Path.GetRandomFileName() + ".part"))
                {
                    return Refusals.NamedTwice(path);
                }

                if (Directory.Exists(path) || (!force && File.Exists(path)))
                {
                    return NotWritten(path, force, string.Empty);
                }

                File.WriteAllBytes(drafts[Path.GetFullPath(path)], content);
            }

            foreach ((string path, byte[] _) in files)
            {
                at = path;
                File.Move(drafts[Path.GetFullPath(path)], path, overwrite: force);
            }

            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return NotWritten(at, force, problem.Message);
        }
        finally
        {
            foreach (string draft in drafts.Values.Where(File.Exists))
            {
                File.Delete(draft);
            }
        }
    }

    private static string NotWritten(string path, bool force, string problem) =>
        !force && File.Exists(path) ? Refusals.Exists(path) : Refusals.CannotWrite(path, WhyNot(path) ?? problem);

    // The two usual reasons in words of our own: the system's speak of the draft.
    private static string? WhyNot(string path)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? string.Empty;
        return Directory.Exists(path) ? Refusals.IsFolder : folder.Length > 0 && !Directory.Exists(folder) ? Refusals.NoFolder(folder) : null;
    }
}
