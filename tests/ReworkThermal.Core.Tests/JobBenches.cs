using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Data.Requests;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.Core.Tests;

/// <summary>The shipped demo joint with everything its pads are judged with.</summary>
internal static class JobBenches
{
    internal static readonly DateTimeOffset Start = new(2026, 3, 1, 8, 0, 0, TimeSpan.Zero);

    internal static PadId Pad { get; } = new("1");

    internal static MassFractions LeadFree { get; } = Shelf.Read("Sn96.5Ag3Cu0.5");

    internal static JointSite Site => PlanDemo.Workshop.Profiles.Joints["jack-anchor-six-layer"].On(PlanDemo.Workshop.Profiles.Boards["six-layer-controller"]);

    internal static IReadOnlyList<ToolSetting> Iron { get; } = [new ToolSetting.Iron("medium", Temperature.FromDegreesCelsius(350))];

    internal static JobBench New() => new(
        Shelf.Engine,
        Shelf.Alloys.Properties,
        PlanDemo.Workshop.Limits,
        PlanDemo.Workshop.Removals.Single(r => r.Name == "braid"),
        new ToolShelf(PlanDemo.Workshop.Profiles, PlanDemo.Workshop.Profiles.Rooms["still-air"]),
        Shelf.Alloys.Find);

    /// <summary>A touch of one pad with a measured, steady interface temperature; it begins some minutes after the last.</summary>
    internal static Exposure Steady(double celsius, double seconds, int minute, TouchPurpose purpose = TouchPurpose.Other, AddedSolder? added = null) => new(
        purpose,
        Iron,
        Start.AddMinutes(minute),
        Duration.FromSeconds(seconds),
        [new HeatedPad(Pad, true, null, InterfaceSeries.Measured(seconds > 0 ? new TemperatureHistory([0, seconds], [celsius, celsius]) : new TemperatureHistory([0], [celsius])))],
        added);

    /// <summary>The ledger of a pad with touches.</summary>
    internal static PadLedger Ledger(params IEnumerable<Exposure> touches) => State(touches).Pads[Pad];

    /// <summary>A job with one pin and touches.</summary>
    internal static JobState State(IEnumerable<Exposure> touches, int? voided = null)
    {
        List<JobEvent> events =
        [
            new JobEvent.JobOpened(new JobBrief("bench")),
            new JobEvent.PinsRegistered([new Pin(Pad, "GND", 1, 1, new PinDuty.Ground())]),
            .. touches.Select(t => new JobEvent.ExposureLogged(t, null)),
        ];
        if (voided is { } number)
        {
            events.Add(new JobEvent.EntryVoided(number, "a mistake"));
        }

        JobEntry[] entries = [.. events.Select((e, i) => new JobEntry(i + 1, Start.AddMinutes(i), e))];
        _ = Assert.IsType<EventVerdict.Accepted>(JobRules.JudgeAll(entries));
        return JobState.Replay(new JobId("aaaaaa"), entries);
    }

    internal static PadAccount Judge(PadLedger ledger) => new PadReplay(New()).Of(ledger, Site, LeadFree);
}
