using Microsoft.Data.Sqlite;

namespace ReworkThermal.Data.Store;

/// <summary>
/// The tables of the store and how they came about: an ordered list of steps, each run in one transaction together with the new
/// version number. A step is never changed once released; a new one is added.
/// </summary>
internal static class StoreSchema
{
    /// <summary>Mark in the file header by which SQLite tools and this program know a job store: "RWTJ".</summary>
    internal const int ApplicationId = 0x5257_544A;

    private const string SetApplicationId = "pragma application_id = 1381454922";

    /// <summary>Version 1: jobs and their entries, which can only be added.</summary>
    private const string Version1 =
        """
        create table jobs (
            id integer primary key,
            name text not null unique
        ) strict;

        create table entries (
            job integer not null references jobs (id),
            number integer not null check (number >= 1),
            at_ms integer not null,
            kind text not null,
            body text not null,
            series blob,
            crc integer not null,
            primary key (job, number)
        ) strict, without rowid;

        create index headlines on entries (job, number)
            where kind in ('job_opened', 'brief_revised', 'job_closed', 'job_reopened');

        create trigger entries_stay before update on entries
        begin
            select raise(abort, 'entries are never changed');
        end;

        create trigger entries_last before delete on entries
        begin
            select raise(abort, 'entries are never deleted');
        end;

        pragma user_version = 1;
        """;

    /// <summary>The steps; the first leads from an empty file to version 1.</summary>
    internal static IReadOnlyList<Action<SqliteConnection, SqliteTransaction>> Steps { get; } =
    [
        static (connection, transaction) =>
        {
            using SqliteCommand mark = new(SetApplicationId, connection, transaction);
            _ = mark.ExecuteNonQuery();
            using SqliteCommand tables = new(Version1, connection, transaction);
            _ = tables.ExecuteNonQuery();
        },
    ];

    /// <summary>Brings a store up to date; steps that another process has taken meanwhile are not taken again.</summary>
    internal static void Migrate(SqliteConnection connection, IReadOnlyList<Action<SqliteConnection, SqliteTransaction>> steps)
    {
        while (VersionOf(connection, null) < steps.Count)
        {
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
            int version = VersionOf(connection, transaction);
            if (version < steps.Count)
            {
                steps[version](connection, transaction);
            }

            transaction.Commit();
        }
    }

    /// <summary>Tables, views, indexes and triggers that differ from those this program makes.</summary>
    internal static List<string> Differences(SqliteConnection connection)
    {
        if (VersionOf(connection, null) != Steps.Count)
        {
            return [];
        }

        using SqliteConnection model = new("Data Source=:memory:");
        model.Open();
        Migrate(model, Steps);
        Dictionary<(string Kind, string Name), string> expected = Objects(model);
        Dictionary<(string Kind, string Name), string> found = Objects(connection);
        return
        [
            .. found.Keys.Except(expected.Keys).Select(o => $"the {o.Kind} {o.Name} does not belong in a job store"),
            .. expected.Keys.Except(found.Keys).Select(o => $"the {o.Kind} {o.Name} is missing"),
            .. found.Keys.Intersect(expected.Keys).Where(o => found[o] != expected[o]).Select(o => $"the {o.Kind} {o.Name} was changed"),
        ];
    }

    // SQLite keeps its own objects under names that begin with sqlite_, which nobody else may use.
    private static Dictionary<(string Kind, string Name), string> Objects(SqliteConnection connection)
    {
        const string sql = "select type, name, tbl_name || ': ' || coalesce(sql, '') from sqlite_schema where name not like 'sqlite~_%' escape '~'";
        Dictionary<(string Kind, string Name), string> objects = [];
        using SqliteCommand command = new(sql, connection);
        using SqliteDataReader rows = command.ExecuteReader();
        while (rows.Read())
        {
            objects[(rows.GetString(0), rows.GetString(1))] = rows.GetString(2);
        }

        return objects;
    }

    internal static int VersionOf(SqliteConnection connection, SqliteTransaction? transaction)
    {
        using SqliteCommand command = new("pragma user_version", connection, transaction);
        return (int)(long)command.ExecuteScalar()!;
    }

    internal static int ApplicationIdOf(SqliteConnection connection, SqliteTransaction transaction)
    {
        using SqliteCommand command = new("pragma application_id", connection, transaction);
        return (int)(long)command.ExecuteScalar()!;
    }

    internal static bool HasTables(SqliteConnection connection, SqliteTransaction transaction)
    {
        using SqliteCommand command = new("select exists (select 1 from sqlite_schema)", connection, transaction);
        return (long)command.ExecuteScalar()! != 0;
    }
}
