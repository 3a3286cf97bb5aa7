using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Puts a backup in the place of the store. Every moment at which the power may fail leaves either the old store or the backup in the
/// place, never a mixture, and the old store whole under a name of its own: the old log, which SQLite would add to the backup, is deleted
/// only after it was copied, and before the backup comes in.
/// </summary>
public static class StoreRestore
{
    // Bytes by which SQLite tells its users of one another, from sqlite.org/fileformat2.html#the_lock_byte_page and os.h of its source.
    private const long LockBytes = 0x4000_0000;
    private const long LockLength = 512;

    /// <summary>Restores a backup.</summary>
    /// <param name="store">Path of the store; nothing, a damaged or an empty file may be there.</param>
    /// <param name="backup">Path of the backup, which is not changed.</param>
    /// <param name="clock">Dates the copy of the store before.</param>
    /// <returns>What the restored store holds.</returns>
    /// <exception cref="JobStoreException">The backup is not whole, another program has the store open, or a file cannot be written; nothing was changed.</exception>
    public static RestoreSummary Restore(string store, string backup, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        string path = StoreFile.Real(store);
        string source = StoreFile.Real(backup);
        if (path == source)
        {
            throw new JobStoreException(StoreTrouble.BadImport, $"The file {source} is the job store itself; name a backup of it.");
        }

        StoreFile.MakeFolder(path);
        string beside = path + "." + Path.GetRandomFileName() + ".tmp";
        try
        {
            StoreExamination whole = Copy(source, beside);
            string? kept = Swap(beside, path, clock);
            return new RestoreSummary(path, whole.Jobs, whole.Entries, kept);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new JobStoreException(StoreTrouble.NotWritable, $"The backup {source} cannot be put in the place of {path}: {problem.Message}", problem);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static StoreExamination Copy(string source, string beside)
    {
        StoreExamination examined;
        try
        {
            using SqliteJobStore from = SqliteJobStore.OpenToLook(source);
            examined = from.Examine();
            if (examined.Problems.Count == 0)
            {
                from.BackupTo(beside, force: false, new OutputFiles([]));
            }
        }
        catch (JobStoreException problem) when (problem.Trouble is StoreTrouble.Damaged or StoreTrouble.NotAStore or StoreTrouble.Newer or StoreTrouble.Unreadable)
        {
            throw new JobStoreException(StoreTrouble.BadImport, $"The file {source} cannot be restored and the job store was left as it is. {problem.Message}", problem);
        }

        if (examined.Problems.Count > 0)
        {
            throw Unsound(source, examined.Problems[0]);
        }

        using SqliteJobStore copy = SqliteJobStore.OpenToLook(beside);
        StoreExamination copied = copy.Examine();
        return copied.Problems.Count == 0 && copied.Jobs == examined.Jobs && copied.Entries == examined.Entries
            ? copied
            : throw Unsound(source, "its copy does not hold the same jobs and entries");
    }

    private static JobStoreException Unsound(string source, string reason) => new(
        StoreTrouble.BadImport,
        $"The file {source} is no sound backup and the job store was left as it is: {reason.TrimEnd('.')}.");

    private static string? Swap(string beside, string path, TimeProvider clock)
    {
        using FileStream? held = Held(path);
        string? kept = Keep(held, path, clock);
        if (OperatingSystem.IsWindows())
        {
            // Windows replaces no file that is open; the others would lose the lock here.
            held?.Dispose();
        }

        StoreFile.DeleteLog(path);
        File.Move(beside, path, overwrite: true);
        return kept;
    }

    /// <summary>
    /// The present file, locked against every other program, or null when there is none. Windows and macOS refuse to share it at once;
    /// on Linux the lock goes on the bytes that SQLite itself locks, so that it works with a damaged file too.
    /// </summary>
    private static FileStream? Held(string path)
    {
        try
        {
            return File.Exists(path) ? Locked(path) : null;
        }
        catch (IOException problem)
        {
            throw new JobStoreException(
                StoreTrouble.Busy,
                $"Another program has the job store {path} open, so that it was left as it is. Leave that program and try again.",
                problem);
        }
    }

    private static FileStream Locked(string path)
    {
        FileStream file = new(path, FileMode.Open, FileAccess.ReadWrite, OperatingSystem.IsWindows() ? FileShare.Delete : FileShare.None);
        try
        {
            if (!OperatingSystem.IsMacOS() && !OperatingSystem.IsWindows())
            {
                file.Lock(LockBytes, LockLength);
            }

            return file;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    // The log goes with its store: entries that were confirmed before a crash may be in the log alone.
    private static string? Keep(FileStream? held, string path, TimeProvider clock)
    {
        bool log = StoreFile.HasLog(path);
        if (held is not { Length: > 0 } && !log)
        {
            return null;
        }

        string kept = NameFor(path, clock);
        if (log)
        {
            WholeFile.Write(StoreFile.LogOf(kept), overwrite: false, to => File.Copy(StoreFile.LogOf(path), to));
        }

        if (held is null)
        {
            return StoreFile.LogOf(kept);
        }

        // Through the handle that holds the lock: closing any other handle of the file would give the lock up.
        WholeFile.Write(kept, overwrite: false, to =>
        {
            using FileStream target = new(to, FileMode.CreateNew, FileAccess.Write);
            held.Position = 0;
            held.CopyTo(target);
        });
        return kept;
    }

    private static string NameFor(string path, TimeProvider clock)
    {
        string stem = string.Create(
            CultureInfo.InvariantCulture,
            $"{Path.Combine(Path.GetDirectoryName(path)!, Path.GetFileNameWithoutExtension(path))}-before-{clock.GetUtcNow().UtcDateTime:yyyy-MM-dd-HHmmss}");
        string ending = Path.GetExtension(path);
        string name = stem + ending;
        for (int again = 2; File.Exists(name) || File.Exists(StoreFile.LogOf(name)); again++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{stem}-{again}{ending}");
        }

        return name;
    }
}
