using System.Buffers.Binary;
using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;
using SQLitePCL;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Opens the file of a store, or refuses it without writing to it. Only after the file proved to be a whole store of a version known
/// here may anything be written.
/// </summary>
internal static partial class StoreFile
{
    private const int HeaderLength = 100;
    private const uint LogMagic = 0x377F0682;
    private const int VersionOffset = 60;
    private const int ApplicationOffset = 68;

    /// <summary>Seconds to wait for another writer before giving up. A write takes milliseconds, a large import a few seconds.</summary>
    internal const int PatienceSeconds = 30;

    /// <summary>Waits inside SQLite come at short rising distances; the wait around them at long ones.</summary>
    private const string WaitInside = "pragma busy_timeout = 1000";

    private static ReadOnlySpan<byte> Magic => "SQLite format 3\0"u8;

    internal static SqliteConnection Open(string path, IReadOnlyList<Action<SqliteConnection, SqliteTransaction>> steps, int patienceSeconds = PatienceSeconds)
    {
        if (!LookAtHeader(path, steps.Count))
        {
            Make(path, steps);
        }

        while (true)
        {
            SqliteConnection connection = Connect(path, SqliteOpenMode.ReadWrite, patienceSeconds);
            try
            {
                bool leftOver = HasLog(path);
                connection.Open();
                Execute(connection, WaitInside);
                Examine(connection, path, steps.Count, leftOver);

                // Another process may have put a restored store in this place while the old one was waited for.
                if (!HasMoved(connection))
                {
                    Execute(connection, "pragma journal_mode = wal");
                    Execute(connection, "pragma synchronous = full");
                    Execute(connection, "pragma fullfsync = 1");
                    StoreSchema.Migrate(connection, steps);
                    return connection;
                }

                connection.Dispose();
            }
            catch (SqliteException problem)
            {
                connection.Dispose();
                throw StoreFaults.From(problem, path);
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        }
    }

    /// <summary>The file itself, where the path is a link.</summary>
    internal static string Real(string path)
    {
        string full = Path.GetFullPath(path);
        try
        {
            return File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return full;
        }
    }

    /// <summary>The write-ahead log of a store.</summary>
    internal static string LogOf(string path) => path + "-wal";

    /// <summary>Whether a log with content lies beside a store, as a process that died leaves it.</summary>
    internal static bool HasLog(string path) => new FileInfo(LogOf(path)) is { Exists: true, Length: > 0 };

    /// <summary>Deletes the log of a store and its shared memory.</summary>
    internal static void DeleteLog(string path)
    {
        File.Delete(LogOf(path));
        File.Delete(path + "-shm");
    }

    /// <summary>Whether the file was moved, deleted or replaced since it was opened. Windows allows none of these on an open file.</summary>
    internal static bool HasMoved(SqliteConnection connection) => NativeSqlite.HasMoved(connection.Handle!);

    private static SqliteConnection Connect(string source, SqliteOpenMode mode, int patienceSeconds = PatienceSeconds) =>
        new(new SqliteConnectionStringBuilder
        {
            DataSource = source,
            Mode = mode,
            Pooling = false,
            ForeignKeys = true,
            DefaultTimeout = patienceSeconds,
        }.ConnectionString);

    /// <summary>Makes a new store beside its place and puts it there whole: nobody ever sees half a store. Another process may be quicker.</summary>
    private static void Make(string path, IReadOnlyList<Action<SqliteConnection, SqliteTransaction>> steps)
    {
        MakeFolder(path);
        if (HasLog(path) && !File.Exists(path))
        {
            throw StoreFaults.LogAlone(path);
        }

        try
        {
            WholeFile.Write(path, overwrite: false, beside =>
            {
                using SqliteConnection connection = Connect(beside, SqliteOpenMode.ReadWriteCreate);
                connection.Open();
                Execute(connection, "pragma journal_mode = wal");
                StoreSchema.Migrate(connection, steps);
            });
        }
        catch (SqliteException problem)
        {
            throw StoreFaults.From(problem, path);
        }
        catch (IOException) when (File.Exists(path))
        {
            // The other's store is as good.
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw StoreFaults.NoFolder(Path.GetDirectoryName(path)!, problem);
        }
    }

    private static void Execute(SqliteConnection connection, [System.Diagnostics.CodeAnalysis.ConstantExpected] string sql)
    {
#pragma warning disable CA2100 // The argument is a constant at every call.
        using SqliteCommand command = new(sql, connection);
#pragma warning restore CA2100
        _ = command.ExecuteNonQuery();
    }

    /// <summary>Whether a file is a job store by its first bytes.</summary>
    /// <param name="path">Its path; nothing need be there.</param>
    internal static bool IsStore(string path)
    {
        byte[] header = FirstBytes(path);
        return header.AsSpan().StartsWith(Magic) && header.Length == HeaderLength && BinaryPrimitives.ReadInt32BigEndian(header.AsSpan(ApplicationOffset)) == StoreSchema.ApplicationId;
    }

    /// <summary>Whether a file is a write-ahead log by its first bytes (sqlite.org/fileformat2.html, 4.1).</summary>
    /// <param name="path">Its path; nothing need be there.</param>
    internal static bool IsLog(string path)
    {
        byte[] header = FirstBytes(path);
        return header.Length >= sizeof(uint) && (BinaryPrimitives.ReadUInt32BigEndian(header) & ~1u) == LogMagic;
    }

    /// <summary>The store that a file belongs to by its name, as its log or its shared memory.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>Path of the store; null when the name is none of these.</returns>
    internal static string? StoreOf(string path) =>
        SqliteJobStore.FilesOf(string.Empty).FirstOrDefault(end => end.Length > 0 && path.EndsWith(end, StringComparison.Ordinal)) is { } ending ? path[..^ending.Length] : null;

    private static byte[] FirstBytes(string path)
    {
        if (InputFile.Objection(path, long.MaxValue) is not null || !File.Exists(path))
        {
            return [];
        }

        byte[] header = new byte[HeaderLength];
        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return header[..file.ReadAtLeast(header, HeaderLength, throwOnEndOfStream: false)];
    }

    /// <summary>
    /// Reads the header bytes without SQLite, so that nothing at all is created beside a file that is refused. Closing the handle takes
    /// SQLite's own POSIX locks away where this process has the store open already (sqlite.org/howtocorrupt.html, 2.2); SQLite notices
    /// that by itself from 3.51 on, and a test holds it to that.
    /// </summary>
    /// <returns>Whether there is a file.</returns>
    private static bool LookAtHeader(string path, int known)
    {
        if (Directory.Exists(path))
        {
            throw new JobStoreException(StoreTrouble.NotAStore, $"{path} is a folder; the job store is a file in it, so name the file with --store.");
        }

        foreach (string file in SqliteJobStore.FilesOf(path))
        {
            if (InputFile.Objection(file, InputFile.MostStore) is { } objection)
            {
                throw new JobStoreException(StoreTrouble.NotAStore, $"The file {file} cannot belong to a job store: {objection}. It was left as it is; choose another file with --store.");
            }
        }

        Span<byte> header = stackalloc byte[HeaderLength];
        int read;
        try
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            read = file.ReadAtLeast(header, HeaderLength, throwOnEndOfStream: false);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return false;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new JobStoreException(StoreTrouble.Unreadable, $"The job store {path} cannot be read: {problem.Message}", problem);
        }

        if (read == 0)
        {
            throw StoreFaults.Empty(path);
        }

        if (read < HeaderLength || !header.StartsWith(Magic))
        {
            throw StoreFaults.NotAStore(path);
        }

        int application = BinaryPrimitives.ReadInt32BigEndian(header[ApplicationOffset..]);
        int version = BinaryPrimitives.ReadInt32BigEndian(header[VersionOffset..]);
        return application is not (0 or StoreSchema.ApplicationId) ? throw StoreFaults.NotAStore(path)
            : application == StoreSchema.ApplicationId && version > known ? throw StoreFaults.Newer(path, version, known)
            : true;
    }

    internal static void MakeFolder(string path)
    {
        string folder = Path.GetDirectoryName(path)!;
        try
        {
            if (Directory.Exists(folder))
            {
                return;
            }

            _ = OperatingSystem.IsWindows()
                ? Directory.CreateDirectory(folder)
                : Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw StoreFaults.NoFolder(folder, problem);
        }
    }

    /// <summary>
    /// Proves the file with SQLite, reading only. When a write-ahead log was left over from a process that died, closing would carry
    /// it over into the file; that is held back until the file is known to be sound.
    /// </summary>
    /// <remarks>
    /// All looks are in one read transaction, so that they see one state of the file. Otherwise another process that makes the store
    /// meanwhile can come in between: a file with no mark yet, but with a version or tables already, would pass for another program's.
    /// </remarks>
    internal static void Examine(SqliteConnection connection, string path, int known, bool leftOver)
    {
        if (leftOver)
        {
            CarryOverOnClose(connection, false);
        }

        using (SqliteTransaction reading = connection.BeginTransaction(deferred: true))
        {
            int application = StoreSchema.ApplicationIdOf(connection, reading);
            int version = StoreSchema.VersionOf(connection, reading);
            if (application != StoreSchema.ApplicationId && (application != 0 || version != 0 || StoreSchema.HasTables(connection, reading)))
            {
                throw StoreFaults.NotAStore(path);
            }

            if (version > known)
            {
                throw StoreFaults.Newer(path, version, known);
            }

            using SqliteCommand command = new("pragma quick_check(1)", connection, reading);
            string answer = (string)command.ExecuteScalar()!;
            if (answer != "ok")
            {
                throw StoreFaults.Damaged(path, answer.ReplaceLineEndings(" "));
            }
        }

        if (leftOver)
        {
            CarryOverOnClose(connection, true);
        }
    }

    private static void CarryOverOnClose(SqliteConnection connection, bool carry) =>
        _ = raw.sqlite3_db_config(connection.Handle, raw.SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, carry ? 0 : 1, out _);
}
