using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using SQLitePCL;
using Xunit.Abstractions;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>A store that several processes use at once, and one whose process is killed. All on real files.</summary>
public sealed class StoreSharingTests(ITestOutputHelper output) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string StorePath => _folder["jobs.db"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(120)]
    [InlineData(199)]
    public void Kill_in_the_middle_of_200_touches_loses_no_confirmed_one(int killAfter)
    {
        JobId job = NewJob();
        List<int> confirmed = [];
        using (Process writer = StoreWriterProcess.Start(StorePath, job, SampleJobs.Pad1, 200))
        {
            while (confirmed.Count < killAfter && writer.StandardOutput.ReadLine() is string line)
            {
                confirmed.Add(int.Parse(line, CultureInfo.InvariantCulture));
            }

            writer.Kill();
            confirmed.AddRange(writer.StandardOutput.ReadToEnd()
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(l => int.Parse(l, CultureInfo.InvariantCulture)));
            writer.WaitForExit();
        }

        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        IReadOnlyList<JobEntry> entries = store.Read(job);
        output.WriteLine($"confirmed {confirmed.Count}, found {entries.Count - 2}");
        Assert.True(confirmed.Count >= killAfter);
        Assert.Equal(Enumerable.Range(3, confirmed.Count), confirmed);
        Assert.InRange(entries.Count - 2, confirmed.Count, confirmed.Count + 1);
        Assert.Equal(entries.Select((_, i) => (double)i).Take(entries.Count - 2), entries.Skip(2).Select(e => ((JobEvent.ExposureLogged)e.What).Exposure.Dwell.Seconds));
        Assert.Empty(store.Examine().Problems);
        _ = Assert.IsType<RecordOutcome.Recorded>(SampleJobs.Desk(store).Record(job, SampleJobs.Touch(3)));
    }

    [Fact]
    public void Two_processes_and_this_one_write_at_once_and_nothing_is_lost()
    {
        JobId job = NewJob();
        const int each = 60;
        using Process first = StoreWriterProcess.Start(StorePath, job, SampleJobs.Pad1, each);
        using Process second = StoreWriterProcess.Start(StorePath, job, new PadId("2"), each);
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            JobDesk desk = SampleJobs.Desk(store);
            for (int i = 0; i < each; i++)
            {
                _ = Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, SampleJobs.Touch(i)));
            }
        }

        foreach (Process process in (Process[])[first, second])
        {
            string confirmed = process.StandardOutput.ReadToEnd();
            string errors = process.StandardError.ReadToEnd();
            process.WaitForExit();
            Assert.Equal(string.Empty, errors);
            Assert.Equal(0, process.ExitCode);
            Assert.Equal(each, confirmed.Split('\n', StringSplitOptions.RemoveEmptyEntries).Distinct().Count());
        }

        using SqliteJobStore after = SqliteJobStore.Open(StorePath);
        IReadOnlyList<JobEntry> entries = after.Read(job);
        Assert.Equal(2 + (3 * each), entries.Count);
        foreach (string pad in (string[])["1", "2"])
        {
            Assert.Equal(
                pad == "1" ? 2 * each : each,
                entries.Select(e => e.What).OfType<JobEvent.ExposureLogged>().Count(e => e.Exposure.Pads[0].Pad.Value == pad));
        }

        Assert.Empty(after.Examine().Problems);
    }

    [Fact]
    public void A_store_held_for_too_long_is_named_busy_and_works_again_afterwards()
    {
        JobId job = NewJob();
        using SqliteJobStore store = SqliteJobStore.Open(StorePath, StoreSchema.Steps, patienceSeconds: 1);
        JobDesk desk = SampleJobs.Desk(store);
        using (SqliteJobStore other = SqliteJobStore.Open(StorePath))
        {
            using SqliteTransaction held = other.Connection.BeginTransaction(deferred: false);
            JobStoreException problem = Assert.Throws<JobStoreException>(() => desk.Record(job, SampleJobs.Touch(1)));
            Assert.Equal(StoreTrouble.Busy, problem.Trouble);
            Assert.DoesNotContain("locked", problem.Message, StringComparison.OrdinalIgnoreCase);
            Assert.Equal(2, store.Read(job).Count);
        }

        _ = Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, SampleJobs.Touch(1)));
    }

    [Fact]
    public void Several_that_make_the_same_new_store_at_once_all_succeed()
    {
        Parallel.For(0, 8, _ => SqliteJobStore.Open(StorePath).Dispose());
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        Assert.Empty(store.Examine().Problems);
    }

    // Both programs find an empty file that is set up for writing ahead but holds nothing yet; between two looks of the one, the other makes
    // the store. The hook runs when SQLite begins a statement, so the moment does not depend on luck.
    [Fact]
    public void A_store_that_another_makes_between_two_looks_is_not_taken_for_another_programs()
    {
        using SqliteConnection maker = Connected();
        using (SqliteCommand ahead = new("pragma journal_mode = wal", maker))
        {
            Assert.Equal("wal", ahead.ExecuteScalar());
        }

        using SqliteConnection looker = Connected();
        bool made = false;
        raw.sqlite3_trace(
            looker.Handle,
            (_, statement) =>
            {
                if (!made && statement.Contains("user_version", StringComparison.Ordinal))
                {
                    made = true;
                    StoreSchema.Migrate(maker, StoreSchema.Steps);
                }
            },
            null);
        StoreFile.Examine(looker, StorePath, StoreSchema.Steps.Count, leftOver: false);
        Assert.True(made);
        Assert.Equal(StoreSchema.Steps.Count, StoreSchema.VersionOf(looker, null));
    }

    // POSIX takes all locks of a process on a file away when the process closes any handle of that file, as the look at the header does.
    // SQLite before 3.51 then took the first store here for closed, and the other process deleted the log that it still writes to; the one
    // that comes with the program asks for the lock on the shared-memory file too.
    [Fact]
    public void A_store_that_is_open_twice_in_one_process_keeps_its_entries_when_another_process_comes_and_goes()
    {
        JobId job = NewJob();
        using (SqliteJobStore first = SqliteJobStore.Open(StorePath))
        {
            SqliteJobStore.Open(StorePath).Dispose();
            Assert.Equal(3, NumberOfTouchByAnotherProcess(job));
            _ = Assert.IsType<RecordOutcome.Recorded>(SampleJobs.Desk(first).Record(job, SampleJobs.Touch(4)));
            Assert.Equal(5, NumberOfTouchByAnotherProcess(job));
        }

        using SqliteJobStore after = SqliteJobStore.Open(StorePath);
        Assert.Equal(5, after.Read(job).Count);
        Assert.Empty(after.Examine().Problems);
    }

    private int NumberOfTouchByAnotherProcess(JobId job)
    {
        using Process other = StoreWriterProcess.Start(StorePath, job, SampleJobs.Pad1, 1);
        string confirmed = other.StandardOutput.ReadToEnd();
        other.WaitForExit();
        Assert.Equal(0, other.ExitCode);
        return int.Parse(confirmed, CultureInfo.InvariantCulture);
    }

    private JobId NewJob()
    {
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        return SampleJobs.OpenWithPins(SampleJobs.Desk(store));
    }

    private SqliteConnection Connected()
    {
        SqliteConnection connection = new($"Data Source={StorePath};Pooling=False");
        connection.Open();
        return connection;
    }
}
