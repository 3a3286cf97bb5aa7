using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Opening for looking only: a store on a medium that cannot be written, or one that shall not be touched.</summary>
internal static partial class StoreFile
{
    /// <summary>Opens a store for looking only. Entries that only its log holds are seen too.</summary>
    /// <param name="path">The file, which must be there.</param>
    /// <param name="known">Version of the format known here.</param>
    /// <param name="inPlace">Whether SQLite may open it as one of several programs first; it may leave an empty log behind where it can.</param>
    /// <param name="scratch">Folder of a copy to delete afterwards, or null.</param>
    /// <exception cref="JobStoreException">It is no store, damaged, newer or cannot be read.</exception>
    internal static SqliteConnection OpenToLook(string path, int known, bool inPlace, out string? scratch)
    {
        scratch = null;
        if (!LookAtHeader(path, known))
        {
            throw new JobStoreException(StoreTrouble.Unreadable, $"There is no job store at {path}.");
        }

        try
        {
            if (inPlace)
            {
                try
                {
                    return Proved(path, path, known);
                }
                catch (SqliteException)
                {
                    // SQLite cannot make the shared memory of a log on a read-only medium, and needs it unless it is told that nothing changes.
                }
            }

            // Without a log the file is all there is.
            return HasLog(path) ? Copied(path, known, out scratch) : Proved(Unchanging(path), path, known);
        }
        catch (SqliteException problem)
        {
            throw StoreFaults.From(problem, path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new JobStoreException(StoreTrouble.Unreadable, $"The job store {path} cannot be read: {problem.Message}", problem);
        }
    }

    private static SqliteConnection Copied(string path, int known, out string scratch)
    {
        scratch = Directory.CreateTempSubdirectory("rework-thermal-").FullName;
        try
        {
            string copy = Path.Combine(scratch, Path.GetFileName(path));
            File.Copy(path, copy);
            File.Copy(LogOf(path), LogOf(copy));
            return Proved(copy, path, known);
        }
        catch
        {
            Directory.Delete(scratch, recursive: true);
            throw;
        }
    }

    private static SqliteConnection Proved(string source, string path, int known)
    {
        SqliteConnection connection = Connect(source, SqliteOpenMode.ReadOnly);
        try
        {
            connection.Open();
            Execute(connection, WaitInside);
            Examine(connection, path, known, leftOver: false);
            if (StoreSchema.VersionOf(connection, null) != known)
            {
                throw StoreFaults.Older(path);
            }

            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private static string Unchanging(string path)
    {
        string slashed = path.Replace('\\', '/');
        return "file:" + (slashed.StartsWith('/') ? string.Empty : "/") + string.Join('/', slashed.Split('/').Select(Uri.EscapeDataString)) + "?immutable=1";
    }
}
