using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.Core.Jobs;

/// <summary>Walks the entries of a job once and collects what counts. Voided entries are known before the walk begins.</summary>
internal sealed class JobFold
{
    private readonly JobId _id;
    private readonly IReadOnlyList<JobEntry> _entries;
    private readonly Dictionary<int, VoidedEntry> _voided = [];
    private readonly List<Pin> _pins = [];
    private readonly PadFold _pads = new();
    private readonly List<Logged<TouchStart>> _openTouches = [];
    private readonly List<Logged<Exposure>> _exposures = [];
    private readonly List<Logged<TimedMeasurement>> _measurements = [];
    private readonly CheckFold _checks = new();
    private readonly List<Logged<JumperWire>> _wires = [];
    private readonly List<Logged<JobEvent.NoteTaken>> _notes = [];
    private Logged<AcceptedPlan>? _plan;
    private JobBrief? _brief;
    private JobStatus _status;
    private bool _cautionsShown;

    internal JobFold(JobId id, IReadOnlyList<JobEntry> entries)
    {
        if (entries.Count == 0 || entries[0].What is not JobEvent.JobOpened)
        {
            throw new ArgumentException("a job begins with the event that opens it", nameof(entries));
        }

        _id = id;
        _entries = entries;
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i].Number != i + 1)
            {
                throw new ArgumentException("the entries of a job are numbered from 1 without gaps", nameof(entries));
            }

            if (entries[i].What is JobEvent.EntryVoided voided && voided.Number >= 1 && voided.Number <= i)
            {
                _voided.TryAdd(voided.Number, new VoidedEntry(entries[voided.Number - 1], entries[i].Number, voided.Reason));
            }
        }
    }

    internal JobState Run()
    {
        foreach (JobEntry entry in _entries)
        {
            if (!_voided.ContainsKey(entry.Number))
            {
                Take(entry);
            }
            else if (entry.What is JobEvent.ExposureLogged { Ends: int start })
            {
                // What was logged was wrong, but the tool did come off: the touch is not open again.
                Settle(start);
            }
        }

        PinRegister register = PinRegister.Of(_pins);
        return new JobState
        {
            Id = _id,
            Brief = _brief!,
            Status = _status,
            Entries = _entries,
            Register = register,
            Pads = _pads.Ledgers(),
            OpenTouches = _openTouches,
            Exposures = _exposures,
            Measurements = _measurements,
            Checks = _checks.Progress(register),
            Wires = _wires,
            Notes = _notes,
            Plan = _plan,
            CautionsShown = _cautionsShown,
            Voided = _voided,
        };
    }

    private void Take(JobEntry entry)
    {
        switch (entry.What)
        {
            case JobEvent.JobOpened opened:
                _brief = opened.Brief;
                break;
            case JobEvent.BriefRevised revised:
                _brief = revised.Brief;
                break;
            case JobEvent.PinsRegistered registered:
                _pins.AddRange(registered.Pins);
                _pads.Add(registered.Pins);
                break;
            case JobEvent.PadRegistered registered:
                _pads.Add(registered);
                break;
            case JobEvent.PadStateSeen seen:
                _pads.See(seen.Pad, seen.State);
                _checks.Disturb(seen.Pad, seen.State);
                break;
            case JobEvent.PriorHeatStated stated:
                _pads.State(stated.Pads, stated.Heat);
                break;
            case JobEvent.PlanAccepted accepted:
                _plan = Log(entry, accepted.Plan);
                break;
            case JobEvent.CautionsShown:
                _cautionsShown = true;
                break;
            case JobEvent.TouchStarted started:
                _openTouches.Add(Log(entry, started.Start));
                break;
            case JobEvent.TouchDropped dropped:
                Settle(dropped.Start);
                break;
            case JobEvent.ExposureLogged logged:
                Take(entry, logged);
                break;
            case JobEvent.MeasurementTaken taken:
                _measurements.Add(Log(entry, taken.Measurement));
                break;
            case JobEvent.CheckDone done:
                _checks.Take(Log(entry, done));
                break;
            case JobEvent.WireRun run:
                _wires.Add(Log(entry, run.Wire));
                _pads.Wire(run.Wire);
                _checks.Disturb(run.Wire.From);
                _checks.Disturb(run.Wire.To);
                break;
            case JobEvent.NoteTaken note:
                _notes.Add(Log(entry, note));
                break;
            case JobEvent.JobClosed:
                _status = JobStatus.Closed;
                break;
            case JobEvent.JobReopened:
                _status = JobStatus.Open;
                break;
            case JobEvent.EntryVoided:
                break;
            default:
                throw new InvalidOperationException($"no rule for {entry.What.GetType().Name}");
        }
    }

    private void Take(JobEntry entry, JobEvent.ExposureLogged logged)
    {
        if (logged.Ends is int start)
        {
            Settle(start);
        }

        _exposures.Add(Log(entry, logged.Exposure));
        foreach (HeatedPad share in logged.Exposure.Pads)
        {
            _pads.Heat(new PadHeat(entry.Number, logged.Exposure, share));
            if (share.Disturbed)
            {
                _checks.Disturb(share.Pad);
            }
        }
    }

    private void Settle(int start) => _openTouches.RemoveAll(t => t.Number == start);

    private static Logged<T> Log<T>(JobEntry entry, T what) => new(entry.Number, entry.At, what);
}
