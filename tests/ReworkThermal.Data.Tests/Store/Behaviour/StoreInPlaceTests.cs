using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>A store whose file is moved, deleted or replaced while it is open.</summary>
public sealed class StoreInPlaceTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string StorePath => _folder["jobs.db"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("deleted")]
    [InlineData("moved")]
    [InlineData("replaced")]
    [InlineData("without log")]
    public void Nothing_is_confirmed_that_another_process_would_not_find(string what)
    {
        // Windows does not let an open store be taken away.
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        JobDesk desk = SampleJobs.Desk(store);
        JobId job = SampleJobs.OpenWithPins(desk);
        store.MustBeInPlace();
        byte[] before = SampleJobs.Canonical(store);
        File.Copy(StorePath, _folder["copy"]);
        switch (what)
        {
            case "deleted":
                File.Delete(StorePath);
                break;
            case "moved":
                File.Move(StorePath, _folder["elsewhere.db"]);
                break;
            case "replaced":
                File.Move(_folder["copy"], StorePath, overwrite: true);
                break;
            default:
                File.Delete(StorePath + "-wal");
                break;
        }

        Assert.Equal(StoreTrouble.Gone, Assert.Throws<JobStoreException>(store.MustBeInPlace).Trouble);
        Assert.Equal(StoreTrouble.Gone, Assert.Throws<JobStoreException>(() => desk.Record(job, SampleJobs.Touch(1))).Trouble);
        Assert.Equal(StoreTrouble.Gone, Assert.Throws<JobStoreException>(() => desk.RecordAll(job, [SampleJobs.Touch(1), SampleJobs.Touch(2)])).Trouble);
        Assert.Equal(before, SampleJobs.Canonical(store));
        using SqliteJobStore elsewhere = SqliteJobStore.NewFrom(store, _folder["new.db"]);
        Assert.Equal(before, SampleJobs.Canonical(elsewhere));
        _ = Assert.IsType<RecordOutcome.Recorded>(SampleJobs.Desk(elsewhere).Record(job, SampleJobs.Touch(1)));
    }

    [Fact]
    public void A_deleted_store_can_be_made_anew_in_its_place()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        byte[] before;
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            _ = SampleJobs.RecordEverything(SampleJobs.Desk(store));
            before = SampleJobs.Canonical(store);
            File.Delete(StorePath);
            using SqliteJobStore again = SqliteJobStore.NewFrom(store, StorePath);
            _ = SampleJobs.OpenWithPins(SampleJobs.Desk(again));
        }

        using SqliteJobStore after = SqliteJobStore.Open(StorePath);
        Assert.Equal(2, after.List().Count);
        Assert.Empty(after.Examine().Problems);
        Assert.StartsWith(System.Text.Encoding.ASCII.GetString(before)[..^5], System.Text.Encoding.ASCII.GetString(SampleJobs.Canonical(after)), StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_file_is_no_store_and_stays_empty()
    {
        File.WriteAllBytes(StorePath, []);
        JobStoreException problem = Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(StorePath));
        Assert.Equal(StoreTrouble.NotAStore, problem.Trouble);
        Assert.Contains("0 bytes", problem.Message, StringComparison.Ordinal);
        Assert.Equal(0, new FileInfo(StorePath).Length);
        _ = Assert.Single(Directory.GetFiles(_folder.Root));
    }

    [Fact]
    public void A_log_without_its_store_is_not_taken_into_a_new_one()
    {
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            _ = SampleJobs.OpenWithPins(SampleJobs.Desk(store));
            File.Copy(StorePath + "-wal", _folder["left"]);
        }

        File.Delete(StorePath);
        File.Move(_folder["left"], StorePath + "-wal");
        Assert.Contains("log", Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(StorePath)).Message, StringComparison.Ordinal);
        Assert.False(File.Exists(StorePath));
        Assert.True(File.Exists(StorePath + "-wal"));
    }
}
