using System.Diagnostics;
using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>A backup that takes the place of a store: damaged, empty, missing, or left by a crash.</summary>
public sealed class StoreRestoreTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string StorePath => _folder["jobs.db"];

    private string Backup => _folder["backup.db"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("damaged")]
    [InlineData("foreign")]
    [InlineData("empty")]
    [InlineData("missing")]
    [InlineData("sound")]
    public void A_backup_takes_the_place_of_any_store_and_the_store_before_is_kept(string before)
    {
        byte[] expected = StoreAndBackup(out _);
        switch (before)
        {
            case "damaged":
                byte[] bytes = File.ReadAllBytes(StorePath);
                bytes.AsSpan(2 * 4096, 4096).Fill(0xA5);
                File.WriteAllBytes(StorePath, bytes);
                Assert.Contains("store restore", Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(StorePath)).Message, StringComparison.Ordinal);
                break;
            case "foreign":
                File.WriteAllText(StorePath, new string('x', 5000));
                break;
            case "empty":
                File.WriteAllBytes(StorePath, []);
                break;
            case "missing":
                File.Delete(StorePath);
                break;
        }

        byte[] old = File.Exists(StorePath) ? File.ReadAllBytes(StorePath) : [];
        RestoreSummary summary = StoreRestore.Restore(StorePath, Backup, TimeProvider.System);
        Assert.Equal((1, 2), (summary.Jobs, summary.Entries));
        Assert.Equal(old.Length > 0, summary.Kept is not null);
        if (summary.Kept is { } kept)
        {
            Assert.Equal(old, File.ReadAllBytes(kept));
        }

        Assert.Equal(expected, Content());
        Assert.DoesNotContain(Directory.GetFiles(_folder.Root), f => f.EndsWith(".tmp", StringComparison.Ordinal));
    }

    [Fact]
    public void The_log_that_a_crash_left_is_not_mixed_with_the_backup_and_is_kept_with_the_store_before()
    {
        byte[] expected = StoreAndBackup(out JobId job);
        byte[] crashed;
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            for (int i = 0; i < 50; i++)
            {
                _ = Assert.IsType<RecordOutcome.Recorded>(SampleJobs.Desk(store).Record(job, SampleJobs.Touch(i)));
            }

            crashed = SampleJobs.Canonical(store);
            File.Copy(StorePath, _folder["left"]);
            File.Copy(StorePath + "-wal", _folder["left-wal"]);
        }

        File.Move(_folder["left"], StorePath, overwrite: true);
        File.Move(_folder["left-wal"], StorePath + "-wal");
        RestoreSummary summary = StoreRestore.Restore(StorePath, Backup, TimeProvider.System);
        Assert.False(File.Exists(StorePath + "-wal"));
        Assert.Equal(expected, Content());
        using SqliteJobStore kept = SqliteJobStore.Open(summary.Kept!);
        Assert.Equal(crashed, SampleJobs.Canonical(kept));
    }

    [Fact]
    public void A_store_that_another_process_has_open_is_not_replaced()
    {
        _ = StoreAndBackup(out JobId job);
        using (Process other = StoreWriterProcess.Start(StorePath, job, SampleJobs.Pad1, 100_000))
        {
            Assert.Equal("3", other.StandardOutput.ReadLine());
            JobStoreException problem = Assert.Throws<JobStoreException>(() => StoreRestore.Restore(StorePath, Backup, TimeProvider.System));
            Assert.Equal(StoreTrouble.Busy, problem.Trouble);
            other.Kill();
            other.WaitForExit();
        }

        Assert.DoesNotContain(Directory.GetFiles(_folder.Root), f => f.Contains("-before-", StringComparison.Ordinal) || f.EndsWith(".tmp", StringComparison.Ordinal));
        _ = StoreRestore.Restore(StorePath, Backup, TimeProvider.System);
    }

    [Theory]
    [InlineData("cut")]
    [InlineData("text")]
    [InlineData("empty")]
    [InlineData("newer")]
    [InlineData("trigger")]
    [InlineData("entry")]
    [InlineData("missing")]
    public void A_backup_that_is_not_whole_is_refused_and_the_store_left_as_it_is(string fault)
    {
        byte[] expected = StoreAndBackup(out _);
        byte[] bytes = File.ReadAllBytes(Backup);
        switch (fault)
        {
            case "cut":
                File.WriteAllBytes(Backup, bytes[..^4096]);
                break;
            case "text":
                File.WriteAllText(Backup, "not a store at all");
                break;
            case "empty":
                File.WriteAllBytes(Backup, []);
                break;
            case "newer":
                Execute(Backup, "pragma user_version = 99");
                break;
            case "trigger":
                Execute(Backup, "create trigger other after insert on entries begin select 1; end");
                break;
            case "entry":
                bytes[bytes.AsSpan().IndexOf("job with pins"u8)] ^= 1;
                File.WriteAllBytes(Backup, bytes);
                break;
            default:
                File.Delete(Backup);
                break;
        }

        JobStoreException problem = Assert.Throws<JobStoreException>(() => StoreRestore.Restore(StorePath, Backup, TimeProvider.System));
        Assert.Equal(StoreTrouble.BadImport, problem.Trouble);
        Assert.Contains(Backup, problem.Message, StringComparison.Ordinal);
        Assert.Equal(expected, Content());
        Assert.Equal(fault == "missing" ? 1 : 2, Directory.GetFiles(_folder.Root).Length);
    }

    [Fact]
    public void Each_restoring_keeps_a_copy_of_its_own()
    {
        _ = StoreAndBackup(out _);
        string[] kept = [.. Enumerable.Range(0, 3).Select(_ => StoreRestore.Restore(StorePath, Backup, new FixedClock()).Kept!)];
        Assert.Equal(3, kept.Distinct().Count());
        Assert.All(kept, k => Assert.True(File.Exists(k)));
    }

    [Fact]
    public void The_store_itself_is_no_backup_of_it()
    {
        _ = StoreAndBackup(out _);
        _ = File.CreateSymbolicLink(_folder["link.db"], StorePath);
        foreach (string name in (string[])["jobs.db", "link.db"])
        {
            Assert.Equal(StoreTrouble.BadImport, Assert.Throws<JobStoreException>(() => StoreRestore.Restore(StorePath, _folder[name], TimeProvider.System)).Trouble);
        }
    }

    private byte[] StoreAndBackup(out JobId job)
    {
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        job = SampleJobs.OpenWithPins(SampleJobs.Desk(store));
        store.BackupTo(Backup, force: false, new OutputFiles([]));
        return SampleJobs.Canonical(store);
    }

    private byte[] Content()
    {
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        Assert.Empty(store.Examine().Problems);
        return SampleJobs.Canonical(store);
    }

    private static void Execute(string path, string sql)
    {
        using SqliteConnection connection = new($"Data Source={path};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant at every call in this class.
        command.CommandText = sql;
#pragma warning restore CA2100
        _ = command.ExecuteNonQuery();
    }
}
