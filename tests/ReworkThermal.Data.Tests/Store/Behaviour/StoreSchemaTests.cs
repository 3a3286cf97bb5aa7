using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

public sealed class StoreSchemaTests : IDisposable
{
    private static readonly Action<SqliteConnection, SqliteTransaction> _second = static (connection, transaction) =>
    {
        using SqliteCommand command = new("create table extra (word text) strict; pragma user_version = 2;", connection, transaction);
        _ = command.ExecuteNonQuery();
    };

    private static readonly Action<SqliteConnection, SqliteTransaction> _broken = static (connection, transaction) =>
    {
        using SqliteCommand command = new("create table half (word text) strict; pragma user_version = 3; insert into nowhere values (1);", connection, transaction);
        _ = command.ExecuteNonQuery();
    };

    private readonly TemporaryFolder _folder = new();

    private string StorePath => _folder["jobs.db"];

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void An_older_store_is_brought_up_to_date_with_its_jobs()
    {
        JobId job;
        using (SqliteJobStore old = SqliteJobStore.Open(StorePath))
        {
            job = SampleJobs.RecordEverything(SampleJobs.Desk(old));
        }

        using (SqliteJobStore updated = SqliteJobStore.Open(StorePath, [.. StoreSchema.Steps, _second]))
        {
            Assert.Equal(SampleJobs.EveryEvent.Count, updated.Read(job).Count);
            Assert.Equal(2, updated.Examine().FormatVersion);
        }

        Assert.Equal(StoreTrouble.Newer, Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(StorePath)).Trouble);
    }

    [Fact]
    public void A_step_that_fails_leaves_the_version_before_it()
    {
        using (SqliteJobStore old = SqliteJobStore.Open(StorePath))
        {
            _ = SampleJobs.RecordEverything(SampleJobs.Desk(old));
        }

        _ = Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(StorePath, [.. StoreSchema.Steps, _second, _broken]));
        using SqliteJobStore store = SqliteJobStore.Open(StorePath, [.. StoreSchema.Steps, _second]);
        StoreExamination examination = store.Examine();
        Assert.Equal(2, examination.FormatVersion);
        Assert.Equal(SampleJobs.EveryEvent.Count, examination.Entries);
        Assert.Empty(examination.Problems);
    }

    [Theory]
    [InlineData("update entries set body = '{}'")]
    [InlineData("delete from entries")]
    public void Entries_cannot_be_changed_or_deleted_even_by_other_tools(string sql)
    {
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            _ = SampleJobs.RecordEverything(SampleJobs.Desk(store));
        }

        using SqliteConnection connection = new($"Data Source={StorePath};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant in the attribute.
        command.CommandText = sql;
#pragma warning restore CA2100
        SqliteException refused = Assert.Throws<SqliteException>(() => command.ExecuteNonQuery());
        Assert.Contains("entries are never", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_store_writes_ahead_and_waits_for_the_disk()
    {
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        Assert.Equal("wal", store.Ask("pragma journal_mode"));
        Assert.Equal("2", store.Ask("pragma synchronous"));
        Assert.Equal("1", store.Ask("pragma foreign_keys"));
    }

    [Fact]
    public void The_format_of_a_released_version_does_not_change()
    {
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        Assert.Equal(1, store.Examine().FormatVersion);
        Assert.Equal("entries,jobs", store.Ask("select group_concat(name) from (select name from sqlite_schema where type = 'table' order by name)"));
    }
}
