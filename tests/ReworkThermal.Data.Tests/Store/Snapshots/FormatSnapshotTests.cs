using System.Text;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Snapshots;

/// <summary>
/// The forms on disk have not changed. A released form never may: stores and exports of technicians depend on it. What is new gets a
/// new kind, a new optional field or a new version.
/// </summary>
public sealed class FormatSnapshotTests : IDisposable
{
    private static readonly string _golden = Path.Combine(AppContext.BaseDirectory, "Store", "Snapshots", "every-event.json");

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_export_of_every_kind_of_event()
    {
        using InMemoryJobStore store = new();
        _ = SampleJobs.RecordEverything(SampleJobs.Desk(store));
        Assert.Equal(File.ReadAllText(_golden), Encoding.ASCII.GetString(SampleJobs.Canonical(store)));
    }

    [Fact]
    public void The_export_can_be_imported()
    {
        using SqliteJobStore store = SqliteJobStore.Open(_folder["jobs.db"]);
        Assert.Equal(SampleJobs.EveryEvent.Count, JobArchive.ImportFrom(store, _golden).NewEntries);
    }

    // Decimal form: flags 1 (measured), 3 samples, 1 place for times, 2 for temperatures, zigzag differences.
    // Wide form: flags 3, 1 sample, two 64-bit numbers. Simulated: flags 0, error 0.25 K as a 64-bit number, then as above.
    [Theory]
    [InlineData("01030102000A0AC0268827C801", new[] { 0, 0.5, 1 }, new[] { 24.64, 49.64, 50.64 }, false)]
    [InlineData("03010000000000000000555555555555D53F", new[] { 0.0 }, new[] { 1 / 3.0 }, false)]
    [InlineData("00000000000000D03F02000000C801C8019001", new[] { 0.0, 100 }, new[] { 100.0, 172 }, true)]
    public void The_bytes_of_temperature_series(string hex, double[] seconds, double[] celsius, bool simulated)
    {
        TemperatureHistory history = new(seconds, celsius);
        InterfaceSeries series = simulated ? InterfaceSeries.Simulated(history) : InterfaceSeries.Measured(history);
        Assert.Equal(hex, Convert.ToHexString(SeriesBlob.Pack([series])));
    }
}
