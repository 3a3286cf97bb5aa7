using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Store;
using UnitsNet;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

public sealed class JobArchiveTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Export_import_export_gives_the_same_bytes()
    {
        byte[] first;
        using (SqliteJobStore store = SqliteJobStore.Open(_folder["a.db"]))
        {
            JobDesk desk = SampleJobs.Desk(store);
            _ = SampleJobs.RecordEverything(desk);
            _ = SampleJobs.OpenWithPins(desk);
            JobArchive.ExportTo(store, null, _folder["a.json"], false, new OutputFiles([]));
            first = File.ReadAllBytes(_folder["a.json"]);
        }

        using SqliteJobStore other = SqliteJobStore.Open(_folder["b.db"]);
        Assert.Equal(new ImportSummary(2, SampleJobs.EveryEvent.Count + 2, 0), JobArchive.ImportFrom(other, _folder["a.json"]));
        JobArchive.ExportTo(other, null, _folder["b.json"], false, new OutputFiles([]));
        Assert.Equal(first, File.ReadAllBytes(_folder["b.json"]));
        Assert.Empty(other.Examine().Problems);
        Assert.DoesNotContain(first, b => b is < (byte)' ' and not (byte)'\n' or > (byte)'~');
    }

    [Fact]
    public void A_touch_keeps_what_its_simulation_needs_and_an_old_one_says_that_it_was_not_recorded()
    {
        List<ToolSetting> tools =
        [
            new ToolSetting.Iron("iron-90w", Temperature.FromDegreesCelsius(350), ContactState.Flooded),
            new ToolSetting.HotAir("round-5", Temperature.FromDegreesCelsius(380), VolumeFlow.FromLitersPerMinute(20), Length.FromMillimeters(15)),
        ];
        JobEvent.TouchStarted started = new(new TouchStart(TouchPurpose.Mix, tools, [SampleJobs.Pad1], new AddedSolder("Sn42Bi58", Mass.FromMilligrams(4)), BoardSide.Top));
        JobEvent.ExposureLogged logged = SampleJobs.Touch(4) with { Exposure = SampleJobs.Touch(4).Exposure with { Tools = tools, Side = BoardSide.Bottom } };
        using (SqliteJobStore store = SqliteJobStore.Open(_folder["a.db"]))
        {
            JobDesk desk = SampleJobs.Desk(store);
            JobId job = SampleJobs.OpenWithPins(desk);
            Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, started));
            Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, logged));
            JobArchive.ExportTo(store, null, _folder["a.json"], force: false, new OutputFiles([]));
        }

        string text = File.ReadAllText(_folder["a.json"]);
        (TouchStart start, Exposure touch) = Imported(text, "now.db");
        Assert.Equal(tools, start.Tools);
        Assert.Equal((started.Start.Added, started.Start.Side), (start.Added, start.Side));
        Assert.Equal(tools, touch.Tools);
        Assert.Equal(BoardSide.Bottom, touch.Side);

        // The same export as the program wrote it before the new fields; entries carry no checksum in this form.
        string old = text;
        foreach (string field in (string[])[",\"contact\":\"flooded\"", ",\"distance_mm\":15", ",\"side\":\"top\"", ",\"side\":\"bottom\""])
        {
            Assert.Contains(field, old, StringComparison.Ordinal);
            old = old.Replace(field, string.Empty, StringComparison.Ordinal);
        }

        (_, Exposure before) = Imported(old, "old.db");
        Assert.Null(before.Side);
        Assert.Null(Assert.IsType<ToolSetting.Iron>(before.Tools[0]).Contact);
        Assert.Null(Assert.IsType<ToolSetting.HotAir>(before.Tools[1]).Distance);
    }

    private (TouchStart Start, Exposure Touch) Imported(string text, string name)
    {
        string path = _folder[name + ".json"];
        File.WriteAllText(path, text);
        using SqliteJobStore store = SqliteJobStore.Open(_folder[name]);
        _ = JobArchive.ImportFrom(store, path);
        List<JobEvent> events = [.. store.Read(store.List()[0].Id).Select(e => e.What)];
        return (events.OfType<JobEvent.TouchStarted>().Single().Start, events.OfType<JobEvent.ExposureLogged>().Single().Exposure);
    }

    [Property(MaxTest = 30)]
    public Property Any_order_of_any_events_is_the_same_on_disk_in_memory_and_after_a_round_trip() =>
        Prop.ForAll(Gen.Choose(0, SampleJobs.EveryEvent.Count - 1).ListOf(40).ToArbitrary(), picks =>
        {
            using TemporaryFolder folder = new();
            using InMemoryJobStore memory = new();
            using SqliteJobStore disk = SqliteJobStore.Open(folder["a.db"]);
            JobDesk onDisk = SampleJobs.Desk(disk);
            JobDesk inMemory = SampleJobs.Desk(memory);
            JobId job = SampleJobs.OpenWithPins(onDisk);
            Assert.Equal(job, SampleJobs.OpenWithPins(inMemory));
            foreach (int pick in picks)
            {
                Assert.Equal(inMemory.Record(job, SampleJobs.EveryEvent[pick]).GetType(), onDisk.Record(job, SampleJobs.EveryEvent[pick]).GetType());
            }

            using SqliteJobStore other = SqliteJobStore.Open(folder["b.db"]);
            byte[] bytes = SampleJobs.Canonical(Retimed(disk));
            JobArchive.ExportTo(disk, null, folder["a.json"], false, new OutputFiles([]));
            _ = JobArchive.ImportFrom(other, folder["a.json"]);
            Assert.Equal(bytes, SampleJobs.Canonical(Retimed(memory)));
            Assert.Equal(bytes, SampleJobs.Canonical(Retimed(other)));
            Assert.Equal(SampleJobs.Canonical(disk), SampleJobs.Canonical(other));
        });

    [Fact]
    public void Export_and_backup_do_not_overwrite_unless_told()
    {
        using SqliteJobStore store = SqliteJobStore.Open(_folder["a.db"]);
        _ = SampleJobs.OpenWithPins(SampleJobs.Desk(store));
        File.WriteAllText(_folder["there"], "precious");
        JobStoreException export = Assert.Throws<JobStoreException>(() => JobArchive.ExportTo(store, null, _folder["there"], false, new OutputFiles([])));
        JobStoreException backup = Assert.Throws<JobStoreException>(() => store.BackupTo(_folder["there"], false, new OutputFiles([])));
        Assert.All([export, backup], p => Assert.Equal(StoreTrouble.TargetExists, p.Trouble));
        Assert.Equal("precious", File.ReadAllText(_folder["there"]));
        JobArchive.ExportTo(store, null, _folder["there"], true, new OutputFiles([]));
        Assert.StartsWith("{\"format\":\"rework-thermal-jobs\",\"version\":1,\"jobs\":[\n", File.ReadAllText(_folder["there"]), StringComparison.Ordinal);
        store.BackupTo(_folder["there"], true, new OutputFiles([]));
        _ = Assert.Throws<JobStoreException>(() => store.BackupTo(_folder["a.db"], true, new OutputFiles(SqliteJobStore.FilesOf(_folder["a.db"]))));
        Assert.DoesNotContain(Directory.GetFiles(_folder.Root), f => f.EndsWith(".part", StringComparison.Ordinal));
    }

    [Fact]
    public void A_backup_opens_as_a_store_with_the_same_jobs()
    {
        using SqliteJobStore store = SqliteJobStore.Open(_folder["a.db"]);
        _ = SampleJobs.RecordEverything(SampleJobs.Desk(store));
        store.BackupTo(_folder["backup.db"], false, new OutputFiles([]));
        using SqliteJobStore backup = SqliteJobStore.Open(_folder["backup.db"]);
        Assert.Equal(SampleJobs.Canonical(store), SampleJobs.Canonical(backup));
        Assert.Empty(backup.Examine().Problems);
    }

    [Fact]
    public void Importing_again_adds_only_what_is_new()
    {
        using SqliteJobStore bench = SqliteJobStore.Open(_folder["bench.db"]);
        using SqliteJobStore office = SqliteJobStore.Open(_folder["office.db"]);
        JobDesk desk = SampleJobs.Desk(bench);
        JobId job = SampleJobs.OpenWithPins(desk);
        JobArchive.ExportTo(bench, null, _folder["x"], false, new OutputFiles([]));
        _ = JobArchive.ImportFrom(office, _folder["x"]);
        _ = desk.Record(job, SampleJobs.Touch(3));
        JobArchive.ExportTo(bench, [job], _folder["x"], true, new OutputFiles([]));
        Assert.Equal(new ImportSummary(0, 1, 2), JobArchive.ImportFrom(office, _folder["x"]));
        Assert.Equal(new ImportSummary(0, 0, 3), JobArchive.ImportFrom(office, _folder["x"]));
    }

    [Fact]
    public void Two_different_records_of_one_job_are_not_merged()
    {
        using SqliteJobStore a = SqliteJobStore.Open(_folder["a.db"]);
        using SqliteJobStore b = SqliteJobStore.Open(_folder["b.db"]);
        _ = SampleJobs.OpenWithPins(SampleJobs.Desk(a));
        _ = SampleJobs.RecordEverything(SampleJobs.Desk(b));
        byte[] before = SampleJobs.Canonical(b);
        JobArchive.ExportTo(a, null, _folder["a.json"], false, new OutputFiles([]));
        JobStoreException problem = Assert.Throws<JobStoreException>(() => JobArchive.ImportFrom(b, _folder["a.json"]));
        Assert.Equal(StoreTrouble.BadImport, problem.Trouble);
        Assert.Contains("differs from entry 1 on", problem.Message, StringComparison.Ordinal);
        Assert.Equal(before, SampleJobs.Canonical(b));
    }

    [Theory]
    [InlineData("{", "", "no valid JSON")]
    [InlineData("rework-thermal-jobs", "other", "its format must be")]
    [InlineData("\"version\":1", "\"version\":2", "its version is 2")]
    [InlineData("\"number\":2", "\"number\":3", "entries are numbered from 1 without gaps")]
    [InlineData("\"event\":\"pins_registered\"", "\"event\":\"pins_invented\"", "jobs[0].entries[1]")]
    [InlineData("\"row\":1", "\"row\":0", "row must be")]
    [InlineData("\"row\":1", "\"row\":\"1\"", "must be a whole number")]
    [InlineData("\"duty\":\"ground\"", "\"duty\":\"ground\",\"color\":\"red\"", "not known here")]
    [InlineData("\"destination\":\"U3.7\",", "", "destination is missing")]
    public void A_file_that_is_not_in_order_is_refused_with_the_place_and_changes_nothing(string old, string replacement, string words)
    {
        using SqliteJobStore store = SqliteJobStore.Open(_folder["a.db"]);
        _ = SampleJobs.OpenWithPins(SampleJobs.Desk(store));
        string text = Encoding.ASCII.GetString(SampleJobs.Canonical(store));
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(_folder["x"], text.Replace(old, replacement, StringComparison.Ordinal));
        using SqliteJobStore target = SqliteJobStore.Open(_folder["b.db"]);
        JobStoreException problem = Assert.Throws<JobStoreException>(() => JobArchive.ImportFrom(target, _folder["x"]));
        Assert.Equal(StoreTrouble.BadImport, problem.Trouble);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
        Assert.Empty(target.List());
    }

    [Fact]
    public void An_export_cut_or_changed_anywhere_is_imported_whole_or_not_at_all()
    {
        byte[] whole;
        using (InMemoryJobStore source = new())
        {
            _ = SampleJobs.RecordEverything(SampleJobs.Desk(source));
            whole = SampleJobs.Canonical(source);
        }

        using SqliteJobStore target = SqliteJobStore.Open(_folder["b.db"]);
        Random random = new(14);
        for (int i = 0; i < 300; i++)
        {
            byte[] hostile = i % 3 == 0 ? whole[..random.Next(whole.Length - 2)] : [.. whole];
            if (i % 3 == 1)
            {
                hostile[random.Next(hostile.Length)] = (byte)random.Next(256);
            }
            else if (i % 3 == 2)
            {
                // A stretch moved to another place: still letters and brackets, no longer in order.
                int at = random.Next(hostile.Length - 200);
                hostile.AsSpan(at, 100).CopyTo(hostile.AsSpan(random.Next(hostile.Length - 100)));
            }

            File.WriteAllBytes(_folder["x"], hostile);
            using InMemoryJobStore sound = new();
            try
            {
                ImportSummary summary = JobArchive.ImportFrom(sound, _folder["x"]);
                Assert.All(sound.List(), h => Assert.IsType<EventVerdict.Accepted>(JobRules.JudgeAll(sound.Read(h.Id))));
                Assert.Equal(sound.List().Sum(h => h.LastNumber), summary.NewEntries);
            }
            catch (JobStoreException problem)
            {
                Assert.Equal(StoreTrouble.BadImport, problem.Trouble);
                Assert.Equal(StoreTrouble.BadImport, Assert.Throws<JobStoreException>(() => JobArchive.ImportFrom(target, _folder["x"])).Trouble);
                Assert.Empty(target.List());
            }
        }
    }

    private static InMemoryJobStore Retimed(IJobStore store)
    {
        InMemoryJobStore same = new();
        _ = same.AppendAll([.. store.List().Select(h => new JobLog(h.Id, [.. store.Read(h.Id).Select(e => e with { At = SampleJobs.Start })]))]);
        return same;
    }
}
