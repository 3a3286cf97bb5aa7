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

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(23)]
    public void Kill_while_many_pads_are_looked_at_leaves_all_of_an_addition_or_none(int killAfter)
    {
        const int pads = 300;
        JobId job;
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            JobDesk desk = SampleJobs.Desk(store);
            job = Assert.IsType<RecordOutcome.Recorded>(desk.Open(new JobBrief("many pads"))).State.Id;
            _ = Assert.IsType<RecordOutcome.Recorded>(desk.RecordAll(job, [.. Enumerable.Range(1, pads).Select(i => new JobEvent.PadRegistered(new PadId(Number(i)), "pad"))]));
        }

        int confirmed = 0;
        using (Process writer = StoreWriterProcess.Start(StorePath, job, "looks", string.Join(',', Enumerable.Range(1, pads).Select(Number)), 100_000))
        {
            while (confirmed < killAfter && writer.StandardOutput.ReadLine() is not null)
            {
                confirmed++;
            }

            writer.Kill();
            confirmed += writer.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Length;
            writer.WaitForExit();
        }

        using SqliteJobStore after = SqliteJobStore.Open(StorePath);
        int looks = after.Read(job).Count - 1 - pads;
        Assert.Equal(0, looks % pads);
        Assert.InRange(looks / pads, confirmed, confirmed + 1);
        Assert.Empty(after.Examine().Problems);
    }

    [Fact]
    public void Kill_during_an_import_leaves_all_of_it_or_nothing()
    {
        const int entries = 20_000;
        JobId job = new("job00001");
        using (InMemoryJobStore source = new())
        {
            _ = source.AppendAll([new JobLog(job, [
                new JobEntry(1, SampleJobs.Start, new JobEvent.JobOpened(new JobBrief("imported"))),
                .. Enumerable.Range(2, entries - 1).Select(i => new JobEntry(i, SampleJobs.Start, new JobEvent.NoteTaken("note", null)))])]);
            JobArchive.ExportTo(source, null, _folder["jobs.json"], force: false, new OutputFiles([]));
        }

        SqliteJobStore.Open(StorePath).Dispose();
        foreach (int wait in (int[])[250, 400, 550, 700])
        {
            using (Process writer = StoreWriterProcess.Start(StorePath, job, "import", _folder["jobs.json"], 1))
            {
                bool ended = writer.WaitForExit(wait);
                if (!ended)
                {
                    writer.Kill();
                    writer.WaitForExit();
                }
            }

            using SqliteJobStore after = SqliteJobStore.Open(StorePath);
            int found = after.Read(job).Count;
            output.WriteLine($"killed after {wait} ms: {found} entries");
            Assert.True(found is 0 or entries, $"{found} of {entries}");
            Assert.Empty(after.Examine().Problems);
        }
    }

    [Fact]
    public void Eight_processes_and_this_one_write_at_once_and_nothing_is_lost()
    {
        JobId job = NewJob();
        const int each = 25;
        Process[] others = [.. Enumerable.Range(0, 8).Select(i => StoreWriterProcess.Start(StorePath, job, new PadId(i % 2 == 0 ? "1" : "2"), each))];
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            JobDesk desk = SampleJobs.Desk(store);
            for (int i = 0; i < each; i++)
            {
                _ = Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, SampleJobs.Touch(i)));
            }
        }

        List<string> confirmed = [];
        foreach (Process process in others)
        {
            using (process)
            {
                string lines = process.StandardOutput.ReadToEnd();
                Assert.Equal(string.Empty, process.StandardError.ReadToEnd());
                process.WaitForExit();
                Assert.Equal(0, process.ExitCode);
                confirmed.AddRange(lines.Split('\n', StringSplitOptions.RemoveEmptyEntries));
            }
        }

        Assert.Equal(8 * each, confirmed.Distinct().Count());
        using SqliteJobStore after = SqliteJobStore.Open(StorePath);
        IReadOnlyList<JobEntry> entries = after.Read(job);
        Assert.Equal(2 + (9 * each), entries.Count);
        foreach (string pad in (string[])["1", "2"])
        {
            Assert.Equal(
                pad == "1" ? 5 * each : 4 * each,
                entries.Select(e => e.What).OfType<JobEvent.ExposureLogged>().Count(e => e.Exposure.Pads[0].Pad.Value == pad));
        }

        Assert.Empty(after.Examine().Problems);
    }

    // What kills in the middle of an addition at an exact entry: SQLite itself refuses the twentieth.
    [Fact]
    public void Entries_of_one_addition_are_all_in_or_none()
    {
        JobId job = NewJob();
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        _ = store.Ask("create trigger full before insert on entries when new.number = 20 begin select raise(abort, 'no'); end");
        JobEvent[] notes = [.. Enumerable.Range(0, 40).Select(_ => new JobEvent.NoteTaken("note", null))];
        JobDesk desk = SampleJobs.Desk(store);
        _ = Assert.Throws<JobStoreException>(() => desk.RecordAll(job, notes));
        Assert.Equal(2, store.Read(job).Count);
        _ = store.Ask("drop trigger full");
        _ = Assert.IsType<RecordOutcome.Refused>(desk.RecordAll(job, [.. notes, new JobEvent.NoteTaken("pad that is not there", new PadId("99"))]));
        Assert.Equal(2, store.Read(job).Count);
        Assert.Equal(42, Assert.IsType<RecordOutcome.Recorded>(desk.RecordAll(job, notes)).Entry.Number);
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

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

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
