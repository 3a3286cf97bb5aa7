using System.Globalization;
using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>
/// The job store in one SQLite file. A confirmed entry survives kill -9 and loss of power (write-ahead log, synchronous FULL); any
/// number of processes may use the file at once; a file that is damaged, foreign or newer is refused and left as it is.
/// </summary>
public sealed partial class SqliteJobStore : IJobStore
{
    private readonly SqliteConnection _connection;
    private readonly bool _onlyLooks;
    private readonly string? _scratch;

    private SqliteJobStore(SqliteConnection connection, string path)
    {
        _connection = connection;
        Path = path;
    }

    private SqliteJobStore(SqliteConnection connection, string path, string? scratch)
        : this(connection, path)
    {
        _onlyLooks = true;
        _scratch = scratch;
    }

    /// <summary>Full path of the file.</summary>
    public string Path { get; }

    /// <summary>The connection, so that a test can look at it or set limits on it.</summary>
    internal SqliteConnection Connection => _connection;

    /// <summary>
    /// Opens a store; makes the file and its folder when they are not there. One that may not be written is opened for looking only.
    /// </summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The store.</returns>
    /// <exception cref="JobStoreException">The file cannot be used; it was left as it is.</exception>
    public static SqliteJobStore Open(string path) => Open(path, StoreSchema.Steps);

    /// <summary>Opens a store that must be there already; for commands that only look.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The store.</returns>
    /// <exception cref="JobStoreException">There is no such file, or it cannot be used; it was left as it is.</exception>
    public static SqliteJobStore OpenExisting(string path) => FileMark.Of(path) is not null
        ? Open(path)
        : throw new JobStoreException(StoreTrouble.Unreadable, $"There is no job store at {System.IO.Path.GetFullPath(path)}.");

    /// <summary>The files of a store: itself, its write-ahead log, the memory that processes share, and the journal of other modes.</summary>
    /// <param name="path">Path of the store.</param>
    /// <returns>Paths; the files need not be there.</returns>
    public static IReadOnlyList<string> FilesOf(string path) => [path, path + "-wal", path + "-shm", path + "-journal"];

    /// <summary>Opens a store with other migration steps than the released ones, or with less patience.</summary>
    internal static SqliteJobStore Open(
        string path,
        IReadOnlyList<Action<SqliteConnection, SqliteTransaction>> steps,
        int patienceSeconds = StoreFile.PatienceSeconds)
    {
        string full = StoreFile.Real(path);
        try
        {
            return new SqliteJobStore(StoreFile.Open(full, steps, patienceSeconds), full);
        }
        catch (JobStoreException trouble) when (trouble.Trouble == StoreTrouble.NotWritable && File.Exists(full))
        {
            return new SqliteJobStore(StoreFile.OpenToLook(full, steps.Count, inPlace: true, out string? scratch), full, scratch);
        }
    }

    /// <summary>Opens a store for looking only and leaves nothing beside it.</summary>
    internal static SqliteJobStore OpenToLook(string path)
    {
        string full = StoreFile.Real(path);
        return new SqliteJobStore(StoreFile.OpenToLook(full, StoreSchema.Steps.Count, inPlace: false, out string? scratch), full, scratch);
    }

    /// <inheritdoc/>
    public IReadOnlyList<JobHeader> List() => Guarded(() =>
    {
        const string sql =
            """
            select j.name, e.number, e.at_ms, e.kind, e.body, e.series, e.crc, l.number, l.at_ms
            from jobs j
            left join entries e on e.job = j.id and e.kind in ('job_opened', 'brief_revised', 'job_closed', 'job_reopened')
            left join entries l on l.job = j.id and l.number = (select max(number) from entries where job = j.id)
            order by j.id, e.number
            """;
        List<JobHeader> headers = [];
        using SqliteCommand command = new(sql, _connection);
        using SqliteDataReader rows = command.ExecuteReader();
        while (rows.Read())
        {
            JobId id = IdOf(rows.GetString(0));
            if (rows.IsDBNull(1))
            {
                throw NoFirstEntry(id);
            }

            JobEntry entry = EntryAt(rows, 1, id);
            if (entry.What is not JobEvent.JobOpened && (headers.Count == 0 || headers[^1].Id != id))
            {
                throw NoFirstEntry(id);
            }

            DateTimeOffset lastAt = DateTimeOffset.FromUnixTimeMilliseconds(rows.GetInt64(8));
            switch (entry.What)
            {
                case JobEvent.JobOpened opened:
                    headers.Add(new JobHeader(id, opened.Brief, JobStatus.Open, entry.At, lastAt, rows.GetInt32(7)));
                    break;
                case JobEvent.BriefRevised revised:
                    headers[^1] = headers[^1] with { Brief = revised.Brief };
                    break;
                default:
                    headers[^1] = headers[^1] with { Status = entry.What is JobEvent.JobClosed ? JobStatus.Closed : JobStatus.Open };
                    break;
            }
        }

        return headers;
    });

    /// <inheritdoc/>
    public IReadOnlyList<JobEntry> Read(JobId job, int after = 0)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Guarded(() =>
        {
            const string sql =
                """
                select e.number, e.at_ms, e.kind, e.body, e.series, e.crc
                from entries e
                where e.job = (select id from jobs where name = $job) and e.number > $after
                order by e.number
                """;
            List<JobEntry> entries = [];
            using SqliteCommand command = new(sql, _connection);
            _ = command.Parameters.AddWithValue("$job", job.Value);
            _ = command.Parameters.AddWithValue("$after", after);
            using SqliteDataReader rows = command.ExecuteReader();
            while (rows.Read())
            {
                entries.Add(EntryAt(rows, 0, job));
            }

            return entries;
        });
    }

    /// <inheritdoc/>
    public AppendOutcome Append(JobId job, int after, DateTimeOffset at, JobEvent what)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(what);
        EntryCodec codec = EntryCodec.Encode(what);
        return Guarded<AppendOutcome>(() =>
        {
            MustBeInPlace();
            using SqliteTransaction transaction = _connection.BeginTransaction(deferred: false);
            int last = LastNumber(job, transaction);
            if (last != after)
            {
                return new AppendOutcome.Overtaken(last);
            }

            JobEntry entry = new(last + 1, DateTimeOffset.FromUnixTimeMilliseconds(at.ToUnixTimeMilliseconds()), what);
            Insert(job, entry, codec, transaction);
            transaction.Commit();
            MustBeInPlace();
            return new AppendOutcome.Written(entry);
        });
    }

    /// <inheritdoc/>
    public BatchOutcome AppendAll(IReadOnlyList<JobLog> logs)
    {
        ArgumentNullException.ThrowIfNull(logs);
        return Guarded<BatchOutcome>(() =>
        {
            MustBeInPlace();
            using SqliteTransaction transaction = _connection.BeginTransaction(deferred: false);
            int count = 0;
            foreach (JobLog log in logs.Where(l => l.Entries.Count > 0))
            {
                if (LastNumber(log.Id, transaction) != log.Entries[0].Number - 1)
                {
                    return new BatchOutcome.Overtaken(log.Id);
                }

                foreach (JobEntry entry in log.Entries)
                {
                    Insert(log.Id, entry, EntryCodec.Encode(entry.What), transaction);
                    count++;
                }
            }

            transaction.Commit();
            MustBeInPlace();
            return new BatchOutcome.Written(count);
        });
    }

    /// <inheritdoc/>
    public void MustBeInPlace()
    {
        if (IsGone)
        {
            throw StoreFaults.Gone(Path);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _connection.Dispose();
        if (_scratch is not null)
        {
            Directory.Delete(_scratch, recursive: true);
        }
    }

    // An open store that may be written always has its log; without the log's name no other process would see what is written to it.
    private bool IsGone => !_onlyLooks && (StoreFile.HasMoved(_connection) || !File.Exists(StoreFile.LogOf(Path)));

    private JobStoreException NoFirstEntry(JobId job) => StoreFaults.Damaged(Path, $"job {job} has no first entry");

    private int LastNumber(JobId job, SqliteTransaction transaction)
    {
        const string sql = "select coalesce(max(number), 0) from entries where job = (select id from jobs where name = $job)";
        using SqliteCommand command = new(sql, _connection, transaction);
        _ = command.Parameters.AddWithValue("$job", job.Value);
        return (int)(long)command.ExecuteScalar()!;
    }

    private void Insert(JobId job, JobEntry entry, EntryCodec codec, SqliteTransaction transaction)
    {
        if (entry.Number == 1)
        {
            using SqliteCommand opening = new("insert into jobs (name) values ($job)", _connection, transaction);
            _ = opening.Parameters.AddWithValue("$job", job.Value);
            _ = opening.ExecuteNonQuery();
        }

        const string sql =
            """
            insert into entries (job, number, at_ms, kind, body, series, crc)
            values ((select id from jobs where name = $job), $number, $at_ms, $kind, $body, $series, $crc)
            """;
        long atMs = entry.At.ToUnixTimeMilliseconds();
        using SqliteCommand command = new(sql, _connection, transaction);
        _ = command.Parameters.AddWithValue("$job", job.Value);
        _ = command.Parameters.AddWithValue("$number", entry.Number);
        _ = command.Parameters.AddWithValue("$at_ms", atMs);
        _ = command.Parameters.AddWithValue("$kind", codec.Kind);
        _ = command.Parameters.AddWithValue("$body", codec.Body);
        _ = command.Parameters.AddWithValue("$series", codec.Series is null ? DBNull.Value : codec.Series);
        _ = command.Parameters.AddWithValue("$crc", (long)EntryChecksum.Of(job.Value, entry.Number, atMs, codec.Kind, codec.Body, codec.Series));
        _ = command.ExecuteNonQuery();
    }

    private JobEntry EntryAt(SqliteDataReader rows, int column, JobId job)
    {
        int number = rows.GetInt32(column);
        long atMs = rows.GetInt64(column + 1);
        EntryCodec codec = new(
            rows.GetString(column + 2),
            rows.GetString(column + 3),
            rows.IsDBNull(column + 4) ? null : rows.GetFieldValue<byte[]>(column + 4));
        string place = string.Create(CultureInfo.InvariantCulture, $"job {job}, entry {number}");
        if (rows.GetInt64(column + 5) != EntryChecksum.Of(job.Value, number, atMs, codec.Kind, codec.Body, codec.Series))
        {
            throw StoreFaults.Damaged(Path, place + " does not match its checksum");
        }

        try
        {
            return new JobEntry(number, DateTimeOffset.FromUnixTimeMilliseconds(atMs), codec.Decode());
        }
        catch (RecordFormatException problem)
        {
            throw StoreFaults.Damaged(Path, $"{place}: {problem.Message}", problem);
        }
    }

    private JobId IdOf(string name) =>
        JobId.Fault(name) is null ? new JobId(name) : throw StoreFaults.Damaged(Path, "a job has no valid identity");

    private T Guarded<T>(Func<T> act)
    {
        try
        {
            return act();
        }
        catch (SqliteException problem)
        {
            throw StoreFaults.From(problem, Path);
        }
    }
}
