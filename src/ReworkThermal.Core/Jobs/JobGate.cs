using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Core.Jobs;

/// <summary>The little that must be known about a job to judge its next event; grows with every entry at the same small cost.</summary>
internal sealed class JobGate
{
    private readonly List<JobEvent> _events = [];
    private readonly HashSet<PadId> _pads = [];
    private readonly List<Pin> _pins = [];
    private readonly SortedSet<int> _openTouches = [];
    private readonly HashSet<int> _voided = [];
    private HashSet<ElectricalCheck> _checks = [];

    internal JobStatus Status { get; private set; }

    internal int LastNumber => _events.Count;

    internal IReadOnlyList<Pin> Pins => _pins;

    internal int? FirstOpenTouch => _openTouches.Count > 0 ? _openTouches.Min : null;

    internal bool HasPad(PadId pad) => _pads.Contains(pad);

    internal bool IsOpenTouch(int number) => _openTouches.Contains(number);

    internal bool IsVoided(int number) => _voided.Contains(number);

    internal bool HasCheck(ElectricalCheck check) => _checks.Contains(check);

    internal JobEvent EventAt(int number) => _events[number - 1];

    internal void Admit(JobEntry entry)
    {
        _events.Add(entry.What);
        switch (entry.What)
        {
            case JobEvent.PinsRegistered registered:
                _pins.AddRange(registered.Pins);
                _pads.UnionWith(registered.Pins.Select(p => p.Number));
                _checks = [.. CheckList.For(PinRegister.Of(_pins)).Select(line => line.Check)];
                break;
            case JobEvent.PadRegistered registered:
                _ = _pads.Add(registered.Pad);
                break;
            case JobEvent.TouchStarted:
                _ = _openTouches.Add(entry.Number);
                break;
            case JobEvent.ExposureLogged { Ends: int start }:
                _ = _openTouches.Remove(start);
                break;
            case JobEvent.TouchDropped dropped:
                _ = _openTouches.Remove(dropped.Start);
                break;
            case JobEvent.EntryVoided voided:
                _ = _voided.Add(voided.Number);
                break;
            case JobEvent.JobClosed:
                Status = JobStatus.Closed;
                break;
            case JobEvent.JobReopened:
                Status = JobStatus.Open;
                break;
            default:
                break;
        }
    }
}
