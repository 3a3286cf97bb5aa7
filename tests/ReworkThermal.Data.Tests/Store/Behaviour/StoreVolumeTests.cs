using System.Diagnostics;
using System.Globalization;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using Xunit.Abstractions;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>A hundred thousand touches. Times are printed, not judged; the benchmarks measure them.</summary>
public sealed class StoreVolumeTests(ITestOutputHelper output) : IDisposable
{
    private const int Touches = 100_000;
    private const int TouchesPerJob = 500;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_hundred_thousand_touches_with_their_temperatures_stay_below_50_MB()
    {
        string path = _folder["jobs.db"];
        List<JobLog> logs = [];
        for (int job = 0; job < Touches / TouchesPerJob; job++)
        {
            List<JobEntry> entries = [new(1, SampleJobs.Start, new JobEvent.JobOpened(new JobBrief("job"))), new(2, SampleJobs.Start, new JobEvent.PinsRegistered(SampleJobs.Pins))];
            for (int i = 0; i < TouchesPerJob; i++)
            {
                double dwell = 3 + (i * 7 % 50 / 10.0);
                InterfaceSeries series = InterfaceSeries.Simulated(SampleJobs.Ramp((int)(dwell * 10), 200 + (i % 60), 1.5 + (i % 7 / 5.0)));
                entries.Add(new JobEntry(i + 3, SampleJobs.Start.AddMinutes(i), SampleJobs.Touch(dwell, series)));
            }

            logs.Add(new JobLog(new JobId(string.Create(CultureInfo.InvariantCulture, $"job{job:D5}")), entries));
        }

        using (SqliteJobStore store = SqliteJobStore.Open(path))
        {
            _ = Assert.IsType<BatchOutcome.Written>(store.AppendAll(logs));
        }

        long bytes = new FileInfo(path).Length;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:F1} MB, {bytes / (double)Touches:F0} bytes a touch"));
        Assert.InRange(bytes, 1, 50_000_000);
        for (int i = 0; i < 3; i++)
        {
            long start = Stopwatch.GetTimestamp();
            using SqliteJobStore store = SqliteJobStore.Open(path);
            TimeSpan opened = Stopwatch.GetElapsedTime(start);
            JobState state = SampleJobs.Desk(store).Load(new JobId("job00123"))!;
            TimeSpan loaded = Stopwatch.GetElapsedTime(start);
            int listed = store.List().Count;
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"open {opened.TotalMilliseconds:F0} ms, with one job {loaded.TotalMilliseconds:F0} ms, with the list {Stopwatch.GetElapsedTime(start).TotalMilliseconds:F0} ms"));
            Assert.Equal(TouchesPerJob, state.Pads[SampleJobs.Pad1].Heats.Count);
            Assert.Equal(Touches / TouchesPerJob, listed);
        }
    }
}
