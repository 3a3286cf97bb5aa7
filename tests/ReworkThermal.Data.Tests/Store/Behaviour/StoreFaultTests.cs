using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>Files that are damaged, foreign or newer are refused and left as they are. All on real files.</summary>
public sealed class StoreFaultTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string StorePath => _folder["jobs.db"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(0.97)]
    public void A_truncated_file_is_refused_and_left_as_it_is(double kept)
    {
        FillStore(300);
        using (FileStream file = new(StorePath, FileMode.Open))
        {
            file.SetLength((long)(file.Length * kept));
        }

        RefusedUntouched(StoreTrouble.Damaged, "damaged");
    }

    [Fact]
    public void A_file_cut_inside_its_header_is_refused_and_left_as_it_is()
    {
        FillStore(1);
        using (FileStream file = new(StorePath, FileMode.Open))
        {
            file.SetLength(60);
        }

        RefusedUntouched(StoreTrouble.NotAStore, "not a job store");
    }

    [Fact]
    public void Overwritten_pages_are_refused_and_left_as_they_are()
    {
        FillStore(300);
        using (FileStream file = new(StorePath, FileMode.Open))
        {
            file.Position = 6 * 4096;
            file.Write(Enumerable.Repeat((byte)0xA5, 3 * 4096).ToArray());
        }

        RefusedUntouched(StoreTrouble.Damaged, "damaged");
    }

    [Fact]
    public void A_damaged_file_with_a_log_left_over_by_a_kill_is_left_as_it_is()
    {
        FillStore(300);
        JobId job = new("job00002");
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            _ = store.Append(job, 0, SampleJobs.Start, new JobEvent.JobOpened(new JobBrief("late")));
            File.Copy(StorePath + "-wal", _folder["copy-wal"]);
            File.Copy(StorePath, _folder["copy"]);
        }

        File.Delete(StorePath);
        File.Move(_folder["copy"], StorePath);
        File.Move(_folder["copy-wal"], StorePath + "-wal");
        using (FileStream file = new(StorePath, FileMode.Open))
        {
            file.Position = 6 * 4096;
            file.Write(Enumerable.Repeat((byte)0xA5, 3 * 4096).ToArray());
        }

        byte[] log = File.ReadAllBytes(StorePath + "-wal");
        Assert.NotEmpty(log);
        RefusedUntouched(StoreTrouble.Damaged, "damaged");
        Assert.Equal(log, File.ReadAllBytes(StorePath + "-wal"));
    }

    [Fact]
    public void One_changed_letter_inside_an_entry_is_noticed_when_it_is_read()
    {
        JobId job = NewJob();
        byte[] bytes = File.ReadAllBytes(StorePath);
        int at = bytes.AsSpan().IndexOf("job with pins"u8);
        Assert.True(at > 0);
        bytes[at] ^= 1;
        File.WriteAllBytes(StorePath, bytes);
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        JobStoreException problem = Assert.Throws<JobStoreException>(() => store.Read(job));
        Assert.Equal(StoreTrouble.Damaged, problem.Trouble);
        Assert.Contains("entry 1 does not match its checksum", problem.Message, StringComparison.Ordinal);
        Assert.Equal(problem.Message, Assert.Single(store.Examine().Problems));
    }

    [Fact]
    public void A_store_cut_anywhere_is_refused_or_reads_as_it_was()
    {
        FillStore(60);
        byte[] whole = File.ReadAllBytes(StorePath);
        for (int length = 0; length < whole.Length; length += 1024)
        {
            File.WriteAllBytes(StorePath, whole[..length]);
            _ = Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(StorePath));
            Assert.Equal(whole[..length], File.ReadAllBytes(StorePath));
        }
    }

    [Fact]
    public void A_changed_bit_is_noticed_or_changes_no_entry()
    {
        FillStore(40);
        byte[] whole = File.ReadAllBytes(StorePath);
        byte[] expected;
        using (SqliteJobStore store = SqliteJobStore.Open(StorePath))
        {
            expected = SampleJobs.Canonical(store);
        }

        Random random = new(14);
        int noticed = 0;
        for (int i = 0; i < 150; i++)
        {
            byte[] changed = [.. whole];
            changed[random.Next(changed.Length)] ^= (byte)(1 << random.Next(8));
            File.WriteAllBytes(StorePath, changed);
            try
            {
                using SqliteJobStore store = SqliteJobStore.Open(StorePath);
                if (store.Examine().Problems.Count == 0)
                {
                    Assert.Equal(expected, SampleJobs.Canonical(store));
                    continue;
                }
            }
            catch (JobStoreException)
            {
                // Refused.
            }

            noticed++;
        }

        Assert.InRange(noticed, 1, 150);
    }

    [Fact]
    public void Another_kind_of_file_is_refused_and_left_as_it_is()
    {
        File.WriteAllText(StorePath, new string('x', 500));
        RefusedUntouched(StoreTrouble.NotAStore, "not a job store");
    }

    [Fact]
    public void A_database_of_another_program_is_refused_and_left_as_it_is()
    {
        OtherDatabase("create table songs (title text)");
        RefusedUntouched(StoreTrouble.NotAStore, "not a job store");
        File.Delete(StorePath);
        OtherDatabase("pragma application_id = 77");
        RefusedUntouched(StoreTrouble.NotAStore, "not a job store");
    }

    [Fact]
    public void A_newer_format_is_refused_and_left_as_it_is()
    {
        FillStore(3);
        OtherDatabase("pragma user_version = 99");
        RefusedUntouched(StoreTrouble.Newer, "newer version");
    }

    [Fact]
    public void Looking_at_a_store_that_is_not_there_makes_none()
    {
        JobStoreException problem = Assert.Throws<JobStoreException>(() => SqliteJobStore.OpenExisting(StorePath));
        Assert.Equal(StoreTrouble.Unreadable, problem.Trouble);
        Assert.Empty(Directory.GetFiles(_folder.Root));
    }

    [Fact]
    public void A_folder_in_place_of_the_file_is_refused()
    {
        JobStoreException problem = Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(_folder.Root));
        Assert.Equal(StoreTrouble.NotAStore, problem.Trouble);
    }

    private void RefusedUntouched(StoreTrouble trouble, string words)
    {
        byte[] before = File.ReadAllBytes(StorePath);
        string[] files = Directory.GetFiles(_folder.Root);
        JobStoreException problem = Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(StorePath));
        Assert.Equal(trouble, problem.Trouble);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
        Assert.Contains(StorePath, problem.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(StorePath));
        Assert.Equal(files.Where(f => !f.EndsWith("-shm", StringComparison.Ordinal)).Order(), Directory.GetFiles(_folder.Root).Where(f => !f.EndsWith("-shm", StringComparison.Ordinal)).Order());
    }

    private JobId NewJob()
    {
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        return SampleJobs.OpenWithPins(SampleJobs.Desk(store));
    }

    private void FillStore(int touches)
    {
        using SqliteJobStore store = SqliteJobStore.Open(StorePath);
        JobId job = SampleJobs.OpenWithPins(SampleJobs.Desk(store));
        _ = Assert.IsType<BatchOutcome.Written>(store.AppendAll([new JobLog(job, [.. Enumerable.Range(0, touches)
            .Select(i => new JobEntry(i + 3, SampleJobs.Start, SampleJobs.Touch(i)))])]));
    }

    private void OtherDatabase(string sql)
    {
        using SqliteConnection connection = new($"Data Source={StorePath};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant at every call in this class.
        command.CommandText = sql;
#pragma warning restore CA2100
        _ = command.ExecuteNonQuery();
    }
}
