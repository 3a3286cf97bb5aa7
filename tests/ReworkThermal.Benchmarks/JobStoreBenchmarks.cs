using BenchmarkDotNet.Attributes;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Data;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Store;
using ReworkThermal.Data.Thermodynamics;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.Benchmarks;

/// <summary>A store of 100 000 touches in jobs of 500: opening it, reading one job for its budget, listing the jobs, logging a touch.</summary>
[MemoryDiagnoser]
public class JobStoreBenchmarks
{
    private const int Jobs = 200;
    private const int TouchesPerJob = 500;

    private static readonly DateTimeOffset _start = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);
    private static readonly JobId _job = new("job100");

    private string _folder = string.Empty;
    private string _path = string.Empty;

    /// <summary>Fills the store.</summary>
    [GlobalSetup]
    public void Fill()
    {
        _folder = Directory.CreateTempSubdirectory("rework-bench-").FullName;
        _path = Path.Combine(_folder, "jobs.db");
        using SqliteJobStore store = SqliteJobStore.Open(_path);
        _ = store.AppendAll([.. Enumerable.Range(100, Jobs).Select(j => new JobLog(new JobId(FormattableString.Invariant($"job{j}")), Entries()))]);
        Console.WriteLine(FormattableString.Invariant($"// store: {new FileInfo(_path).Length / 1e6:F1} MB"));
    }

    /// <summary>Removes the store.</summary>
    [GlobalCleanup]
    public void Remove() => Directory.Delete(_folder, recursive: true);

    /// <summary>Opens the store, which proves the whole file, and replays one job.</summary>
    /// <returns>Number of touches on its pad.</returns>
    [Benchmark]
    public int OpenAndReplayOneJob()
    {
        using SqliteJobStore store = SqliteJobStore.Open(_path);
        return JobState.Replay(_job, store.Read(_job)).Pads[new PadId("1")].Heats.Count;
    }

    /// <summary>Opens the store and lists the jobs.</summary>
    /// <returns>Number of jobs.</returns>
    [Benchmark]
    public int OpenAndList()
    {
        using SqliteJobStore store = SqliteJobStore.Open(_path);
        return store.List().Count;
    }

    /// <summary>All that <c>budget show</c> does: reads the data folders, opens the store, replays one job and judges its pads.</summary>
    /// <returns>Share of the budget of its first pad.</returns>
    [Benchmark]
    public double ReadDataAndJudgeOneJob()
    {
        Workshop workshop = Workshop.Load(DataRoot.BesideProgram);
        JobBench bench = new(
            new PhaseEngine(ThermodynamicFiles.Load(Path.Combine(DataRoot.BesideProgram.Alloys, "thermodynamics"))),
            workshop.Alloys.Properties,
            workshop.Limits,
            workshop.Removals[0],
            new ToolShelf(workshop.Profiles, workshop.Profiles.Rooms["still-air"]),
            workshop.Alloys.Find);
        JointSite site = workshop.Profiles.Joints["jack-anchor-six-layer"].On(workshop.Profiles.Boards["six-layer-controller"]);
        MassFractions solder = MassFractions.Of((Element.Sn, 96.5), (Element.Ag, 3), (Element.Cu, 0.5));
        using SqliteJobStore store = SqliteJobStore.OpenExisting(_path);
        PadLedger pad = JobState.Replay(_job, store.Read(_job)).Pads[new PadId("1")];
        return new PadReplay(bench).Of(pad, site, solder).Budget.Share.Central;
    }

    private static List<JobEntry> Entries()
    {
        List<JobEntry> entries =
        [
            new(1, _start, new JobEvent.JobOpened(new JobBrief("job"))),
            new(2, _start, new JobEvent.PinsRegistered([new Pin(new PadId("1"), "pin", 1, 1, new PinDuty.Ground())])),
        ];
        for (int i = 0; i < TouchesPerJob; i++)
        {
            entries.Add(new JobEntry(i + 3, _start.AddMinutes(i), new JobEvent.ExposureLogged(Touch(i), null)));
        }

        return entries;
    }

    private static Exposure Touch(int number)
    {
        int samples = 30 + (number % 50);
        double[] seconds = [.. Enumerable.Range(0, samples).Select(k => k * 0.1)];
        double[] celsius = [.. seconds.Select(t => 100 + ((100 + (number % 60)) * (1 - Math.Exp(-t / (1.5 + (number % 7 / 5.0))))))];
        return new Exposure(
            TouchPurpose.Wick,
            [new ToolSetting.Iron("iron", Temperature.FromDegreesCelsius(350))],
            _start.AddMinutes(number),
            Duration.FromSeconds(samples / 10.0),
            [new HeatedPad(new PadId("1"), true, true, InterfaceSeries.Simulated(new TemperatureHistory(seconds, celsius)))]);
    }
}
