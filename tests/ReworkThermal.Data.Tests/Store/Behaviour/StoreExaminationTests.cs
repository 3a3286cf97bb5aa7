using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>What an examination finds that SQLite itself does not call damage.</summary>
public sealed class StoreExaminationTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("delete from entries where job = 2 and number = 1", "job job00002 has no first entry")]
    [InlineData("delete from entries where job = 1 and number = 1", "job job00001 has no first entry")]
    [InlineData("delete from entries where job = 2", "job job00002 has no first entry")]
    [InlineData("delete from entries where job = 2 and number = 2", "entry 3 stands where entry 2 is due")]
    [InlineData("update jobs set name = 'x' where id = 2", "no valid identity")]
    [InlineData("update jobs set name = case id when 1 then 't' when 2 then 'job00001' end; update jobs set name = 'job00002' where id = 1", "does not match its checksum")]
    [InlineData("create trigger other after insert on entries begin select 1; end", "the trigger other does not belong")]
    [InlineData("create view other as select 1", "the view other does not belong")]
    [InlineData("create table other (a text)", "the table other does not belong")]
    [InlineData("drop index headlines", "the index headlines is missing")]
    [InlineData("drop trigger entries_stay; create trigger entries_stay before update on entries begin select 1; end", "the trigger entries_stay was changed")]
    public void An_examination_finds_what_was_done_to_the_file(string deed, string words)
    {
        string path = _folder["jobs.db"];
        using (SqliteJobStore store = SqliteJobStore.Open(path))
        {
            JobDesk desk = new(store, new FixedClock(), new FixedIds());
            JobId first = SampleJobs.OpenWithPins(desk);
            JobId second = SampleJobs.OpenWithPins(desk);
            _ = desk.Record(second, new JobEvent.BriefRevised(new JobBrief("second, revised")));
            Assert.Equal(("job00001", "job00002"), (first.Value, second.Value));
            Assert.Empty(store.Examine().Problems);
            bool guarded = deed.StartsWith("delete", StringComparison.Ordinal);
            _ = guarded ? store.Ask("drop trigger entries_last") : string.Empty;
            _ = store.Ask(deed);
            _ = guarded ? store.Ask("create trigger entries_last before delete on entries\nbegin\n    select raise(abort, 'entries are never deleted');\nend") : string.Empty;
        }

        using SqliteJobStore examined = SqliteJobStore.Open(path);
        Assert.Contains(examined.Examine().Problems, p => p.Contains(words, StringComparison.Ordinal));
        Assert.DoesNotContain(examined.Examine().Problems, p => p.Contains("entries_last", StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_without_its_first_entry_does_not_show_under_the_name_of_another()
    {
        using SqliteJobStore store = SqliteJobStore.Open(_folder["jobs.db"]);
        JobDesk desk = new(store, new FixedClock(), new FixedIds());
        _ = SampleJobs.OpenWithPins(desk);
        JobId second = SampleJobs.OpenWithPins(desk);
        _ = desk.Record(second, new JobEvent.BriefRevised(new JobBrief("second, revised")));
        _ = store.Ask("drop trigger entries_last");
        _ = store.Ask("delete from entries where job = 2 and number = 1");
        JobStoreException problem = Assert.Throws<JobStoreException>(store.List);
        Assert.Equal(StoreTrouble.Damaged, problem.Trouble);
        Assert.Contains(second.Value, problem.Message, StringComparison.Ordinal);
    }
}
