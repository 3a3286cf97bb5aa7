using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;
using ReworkThermal.Data.Store;
using UnitsNet;

namespace ReworkThermal.Data.Tests.Store;

/// <summary>Invented jobs that use every kind of event.</summary>
internal static class SampleJobs
{
    internal static readonly DateTimeOffset Start = new(2026, 3, 1, 9, 0, 0, TimeSpan.Zero);

    internal static readonly PadId Pad1 = new("1");

    internal static IReadOnlyList<Pin> Pins { get; } =
    [
        new(new PadId("1"), "GND", 1, 1, new PinDuty.Ground()),
        new(new PadId("2"), "D+", 1, 2, new PinDuty.Wired("U3.7"), null, "D"),
        new(new PadId("3"), "D-", 1, 3, new PinDuty.Wired("U3.8"), null, "D"),
        new(new PadId("4"), "5V", 2, 1.5, new PinDuty.Wired("F1.1"), ElectricCurrent.FromAmperes(3)),
        new(new PadId("5"), "NC", 2, 2.5, new PinDuty.NoConnect()),
        new(new PadId("S1"), "SHELL", 3, 1, new PinDuty.Shield(ShieldBond.Separate)),
    ];

    internal static IReadOnlyList<ToolSetting> Tools { get; } =
    [
        new ToolSetting.Iron("iron-90w", Temperature.FromDegreesCelsius(350.5)),
        new ToolSetting.Preheater(null, Temperature.FromDegreesCelsius(120)),
        new ToolSetting.HotAir(null, Temperature.FromDegreesCelsius(280), VolumeFlow.FromLitersPerMinute(18.3)),
    ];

    /// <summary>One event of every kind and form, in an order that the rules accept.</summary>
    internal static IReadOnlyList<JobEvent> EveryEvent { get; } =
    [
        new JobEvent.JobOpened(new JobBrief("Bench 4 \u001b[31mred\u0007 \"µ\" 日本 \ud83d\ude00", "demo-board", null, "demo-connector", "Sn96.5Ag3Cu0.5", true)),
        new JobEvent.BriefRevised(new JobBrief("Bench 4", null, "j", null, null)),
        new JobEvent.PinsRegistered(Pins),
        new JobEvent.PadRegistered(new PadId("TP9"), "landing pad by F1"),
        new JobEvent.PadStateSeen(Pad1, PadState.Loose, "corner up"),
        new JobEvent.PadStateSeen(new PadId("2"), PadState.Sound, null),
        new JobEvent.PriorHeatStated([], PriorCondition.Touched, null),
        new JobEvent.PriorHeatStated([Pad1], PriorCondition.Scorched, "brown ring"),
        new JobEvent.PlanAccepted(new AcceptedPlan(
            "Sn42Bi58", Mass.FromMilligrams(4.1), Temperature.FromDegreesCelsius(320), Temperature.FromDegreesCelsius(100), null, null, Duration.FromSeconds(6), Duration.FromSeconds(9), 3, "no lead")),
        new JobEvent.PlanAccepted(new AcceptedPlan(
            null, null, null, null, Temperature.FromDegreesCelsius(300), VolumeFlow.FromLitersPerMinute(20), Duration.FromSeconds(6), Duration.FromSeconds(6), 0, "air")),
        new JobEvent.CautionsShown(),
        new JobEvent.TouchStarted(new TouchStart(TouchPurpose.Mix, Tools, [Pad1, new PadId("4")])),
        new JobEvent.ExposureLogged(
            new Exposure(
                TouchPurpose.Mix,
                Tools,
                Start,
                Duration.FromSeconds(6.25),
                [
                    new HeatedPad(Pad1, true, true, InterfaceSeries.Simulated(Ramp(60))),
                    new HeatedPad(new PadId("4"), false, null, InterfaceSeries.Measured(new TemperatureHistory([0, 0.1, 1 / 3.0], [25, Math.PI, 217.3]))),
                    new HeatedPad(new PadId("5"), false, false, null),
                ],
                new AddedSolder("Sn42Bi58", Mass.FromMilligrams(3.9)),
                "Sn60Bi35Ag3",
                Temperature.FromDegreesCelsius(98),
                "smoke"),
            12),
        new JobEvent.TouchStarted(new TouchStart(TouchPurpose.Wick, [new ToolSetting.Bath("b", Temperature.FromDegreesCelsius(265))], [Pad1])),
        new JobEvent.TouchDropped(14, "tip was cold"),
        new JobEvent.MeasurementTaken(new TimedMeasurement.Flow(Pad1, Tools, null, Duration.FromSeconds(4.2))),
        new JobEvent.MeasurementTaken(new TimedMeasurement.Reading(
            Pad1, Tools, Temperature.FromDegreesCelsius(24), "far pad", Duration.FromSeconds(10), Temperature.FromDegreesCelsius(201.5))),
        new JobEvent.MeasurementTaken(new TimedMeasurement.Trace(
            Pad1, Tools, null, "plane, 5 mm", InterfaceSeries.Measured(new TemperatureHistory([0, 1, 2], [24.9, 60.25, 90.125])))),
        new JobEvent.CheckDone(new ElectricalCheck.Continuity(Pad1), CheckResult.Pass, new MeterReading.Shown(ElectricResistance.FromOhms(0.2)), null),
        new JobEvent.CheckDone(new ElectricalCheck.Isolation(new PadId("3"), new PadId("2")), CheckResult.Fail, new MeterReading.Shown(ElectricResistance.FromOhms(3)), "bridge"),
        new JobEvent.CheckDone(new ElectricalCheck.GroundIsolation(new PadId("3")), CheckResult.Pass, new MeterReading.OverRange(), null),
        new JobEvent.WireRun(new JumperWire(new PadId("4"), new PadId("TP9"), new WireGauge(30), Length.FromMillimeters(12.5), "PVDF", null), "along the edge"),
        new JobEvent.NoteTaken("line one\nline two\0\u009b31m", Pad1),
        new JobEvent.NoteTaken("general", null),
        new JobEvent.EntryVoided(20, "probe slipped"),
        new JobEvent.JobClosed(null),
        new JobEvent.JobReopened("one more pin"),
        new JobEvent.MeasurementTaken(new TimedMeasurement.FlowedWithin(Pad1, Tools, null, Duration.FromSeconds(5.5))),
        new JobEvent.MeasurementTaken(new TimedMeasurement.NotFlowed(Pad1, Tools, Temperature.FromDegreesCelsius(110), Duration.FromSeconds(8))),
        new JobEvent.JobClosed("done"),
    ];

    /// <summary>A fresh desk on a store.</summary>
    internal static JobDesk Desk(IJobStore store) => new(store, new FixedClock(), new FixedIds());

    /// <summary>Opens a job with pins.</summary>
    internal static JobId OpenWithPins(JobDesk desk)
    {
        RecordOutcome.Recorded opened = Assert.IsType<RecordOutcome.Recorded>(desk.Open(new JobBrief("job with pins")));
        _ = Assert.IsType<RecordOutcome.Recorded>(desk.Record(opened.State.Id, new JobEvent.PinsRegistered(Pins)));
        return opened.State.Id;
    }

    /// <summary>Records every kind of event in a new job.</summary>
    internal static JobId RecordEverything(JobDesk desk)
    {
        JobId? id = null;
        foreach (JobEvent what in EveryEvent)
        {
            RecordOutcome outcome = id is null ? desk.Open(((JobEvent.JobOpened)what).Brief) : desk.Record(id, what);
            id = Assert.IsType<RecordOutcome.Recorded>(outcome).State.Id;
        }

        return id!;
    }

    /// <summary>A touch on one pad.</summary>
    internal static JobEvent.ExposureLogged Touch(double seconds, InterfaceSeries? series = null) => new(
        new Exposure(
            TouchPurpose.Wick,
            [new ToolSetting.Iron("iron-90w", Temperature.FromDegreesCelsius(350))],
            Start.AddSeconds(seconds),
            Duration.FromSeconds(seconds),
            [new HeatedPad(Pad1, true, true, series)]),
        null);

    /// <summary>A heating curve sampled ten times a second, as a simulation gives it.</summary>
    internal static TemperatureHistory Ramp(int samples, double peakC = 235, double timeConstantS = 2)
    {
        double[] seconds = [.. Enumerable.Range(0, samples).Select(i => i * 0.1)];
        double[] celsius = [.. seconds.Select(t => 100 + ((peakC - 100) * (1 - Math.Exp(-t / timeConstantS))))];
        return new TemperatureHistory(seconds, celsius);
    }

    /// <summary>All jobs of a store in their canonical form.</summary>
    internal static byte[] Canonical(IJobStore store)
    {
        using MemoryStream stream = new();
        JobArchive.Export(store, null, stream);
        return stream.ToArray();
    }
}
