using System.Diagnostics;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using Xunit.Abstractions;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>Folders that cannot be written and disks that are full.</summary>
public sealed class StoreDiskTests(ITestOutputHelper output) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_folder_that_cannot_be_made_is_named_in_the_message()
    {
        File.WriteAllText(_folder["file"], "not a folder");
        JobStoreException problem = Assert.Throws<JobStoreException>(() => SqliteJobStore.Open(_folder["file/sub/jobs.db"]));
        Assert.Equal(StoreTrouble.NotWritable, problem.Trouble);
        Assert.Contains(_folder["file/sub"], problem.Message, StringComparison.Ordinal);
        Assert.Contains("--store", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_store_on_a_read_only_disk_can_be_looked_at_exported_and_backed_up_but_not_written(bool crashed)
    {
        string folder = _folder["sealed"];
        _ = Directory.CreateDirectory(folder);
        string path = Path.Combine(folder, "jobs.db");
        byte[] expected;
        JobId job;
        using (SqliteJobStore store = SqliteJobStore.Open(path))
        {
            job = SampleJobs.OpenWithPins(SampleJobs.Desk(store));
            expected = SampleJobs.Canonical(store);
            File.Copy(path, _folder["left"]);
            File.Copy(path + "-wal", _folder["left-wal"]);
        }

        if (crashed)
        {
            File.Move(_folder["left"], path, overwrite: true);
            File.Move(_folder["left-wal"], path + "-wal");
        }

        string[] files = Directory.GetFiles(folder);
        byte[] before = File.ReadAllBytes(path);

        // Permission bits do not bind root; a read-only bind mount binds everyone.
        bool mounted = Run("mount", "--bind", folder, folder) && Run("mount", "-o", "remount,ro,bind", folder);
        if (!mounted && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        try
        {
            if (CanWrite(folder))
            {
                output.WriteLine("skipped: this user can write everywhere and may not mount");
                return;
            }

            using (SqliteJobStore store = SqliteJobStore.Open(path))
            {
                Assert.Equal(expected, SampleJobs.Canonical(store));
                Assert.Empty(store.Examine().Problems);
                JobArchive.ExportTo(store, null, _folder["export.json"], force: false, new OutputFiles([]));
                Assert.Equal(expected, File.ReadAllBytes(_folder["export.json"]));
                store.BackupTo(_folder["backup.db"], force: false, new OutputFiles([]));
                Refused(() => SampleJobs.Desk(store).Record(job, SampleJobs.Touch(1)));
            }

            using (SqliteJobStore backup = SqliteJobStore.Open(_folder["backup.db"]))
            {
                Assert.Equal(expected, SampleJobs.Canonical(backup));
            }

            Refused(() => SqliteJobStore.Open(Path.Combine(folder, "new.db")));
            Assert.Equal(before, File.ReadAllBytes(path));
            Assert.Equal(files, Directory.GetFiles(folder));
        }
        finally
        {
            if (mounted)
            {
                Assert.True(Run("umount", folder));
            }
            else if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
        }

        static void Refused(Action act)
        {
            JobStoreException problem = Assert.Throws<JobStoreException>(act);
            Assert.Equal(StoreTrouble.NotWritable, problem.Trouble);
            Assert.Contains("read-only", problem.Message, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void A_full_disk_is_said_clearly_and_what_was_confirmed_stays()
    {
        string folder = _folder["small"];
        _ = Directory.CreateDirectory(folder);
        if (!Run("mount", "-t", "tmpfs", "-o", "size=1m", "rework-store-test", folder))
        {
            output.WriteLine("skipped: this user may not mount a small file system; the page limit test covers the message");
            return;
        }

        try
        {
            string path = Path.Combine(folder, "jobs.db");
            int confirmed = 2;
            JobId job;
            using (SqliteJobStore store = SqliteJobStore.Open(path))
            {
                JobDesk desk = SampleJobs.Desk(store);
                job = SampleJobs.OpenWithPins(desk);
                JobStoreException problem = Assert.Throws<JobStoreException>(() =>
                {
                    for (int i = 0; i < 5000; i++)
                    {
                        _ = Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, new JobEvent.NoteTaken(new string('n', 2000), null)));
                        confirmed++;
                    }
                });
                Assert.Equal(StoreTrouble.DiskFull, problem.Trouble);
                Assert.Contains("full", problem.Message, StringComparison.Ordinal);
                Assert.Equal(confirmed, store.Read(job).Count);
            }

            output.WriteLine($"{confirmed} entries were confirmed before the disk was full");
            using SqliteJobStore again = SqliteJobStore.Open(path);
            Assert.Equal(confirmed, again.Read(job).Count);
            Assert.Empty(again.Examine().Problems);
        }
        finally
        {
            Assert.True(Run("umount", folder));
        }
    }

    [Fact]
    public void A_store_that_may_not_grow_says_so_and_works_again_when_it_may()
    {
        string path = _folder["jobs.db"];
        using SqliteJobStore store = SqliteJobStore.Open(path);
        JobDesk desk = SampleJobs.Desk(store);
        JobId job = SampleJobs.OpenWithPins(desk);
        _ = store.Ask("pragma max_page_count = 12");
        int confirmed = 2;
        JobStoreException problem = Assert.Throws<JobStoreException>(() =>
        {
            for (int i = 0; i < 200; i++)
            {
                _ = Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, new JobEvent.NoteTaken(new string('n', 2000), null)));
                confirmed++;
            }
        });
        Assert.Equal(StoreTrouble.DiskFull, problem.Trouble);
        Assert.Equal(confirmed, store.Read(job).Count);
        _ = store.Ask("pragma max_page_count = 1000000");
        _ = Assert.IsType<RecordOutcome.Recorded>(desk.Record(job, new JobEvent.NoteTaken("fits again", null)));
        Assert.Empty(store.Examine().Problems);
    }

    private static bool CanWrite(string folder)
    {
        try
        {
            string probe = Path.Combine(folder, "probe");
            File.WriteAllText(probe, "x");
            File.Delete(probe);
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool Run(string program, params string[] arguments)
    {
        if (!OperatingSystem.IsLinux())
        {
            return false;
        }

        try
        {
            using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
