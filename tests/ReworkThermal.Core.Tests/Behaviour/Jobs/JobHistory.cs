using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Behaviour.Jobs;

/// <summary>A job that grows event by event, each judged as it comes.</summary>
internal sealed class JobHistory
{
    private static readonly DateTimeOffset _start = new(2026, 3, 1, 8, 0, 0, TimeSpan.Zero);

    private readonly List<JobEntry> _entries = [];

    internal JobHistory() => Add(new JobEvent.JobOpened(new JobBrief("job")));

    internal JobState State => JobState.Replay(new JobId("aaaaaa"), [.. _entries]);

    internal static JobHistory WithPins(IReadOnlyList<Pin> pins)
    {
        JobHistory history = new();
        history.Add(new JobEvent.PinsRegistered(pins));
        return history;
    }

    internal static JobHistory WithSixPins() => WithPins([.. Enumerable.Range(1, 6).Select(i => new Pin(
        new PadId($"{i}"), $"S{i}", 1, i, i == 1 ? new PinDuty.Ground() : new PinDuty.Wired($"U1.{i}")))]);

    internal static JobEvent.ExposureLogged Touch(double seconds, IReadOnlyList<PadId> pads, TouchPurpose purpose = TouchPurpose.Wick, double startS = 0, int? ends = null) => new(
        new Exposure(
            purpose,
            [new ToolSetting.Iron(null, Temperature.FromDegreesCelsius(340))],
            _start.AddSeconds(startS),
            Duration.FromSeconds(seconds),
            [.. pads.Select(p => new HeatedPad(p, true, true, null))]),
        ends);

    internal static PadId Pad(int number) => new($"{number}");

    internal int Add(JobEvent what)
    {
        EventVerdict verdict = JobRules.Judge(_entries.Count == 0 ? null : State, what);
        _ = Assert.IsType<EventVerdict.Accepted>(verdict);
        _entries.Add(new JobEntry(_entries.Count + 1, _start.AddMinutes(_entries.Count), what));
        return _entries.Count;
    }

    internal string Refuse(JobEvent what) => Assert.IsType<EventVerdict.Refused>(JobRules.Judge(State, what)).Reason;
}
