using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.Core.Jobs;

/// <summary>A job as it stands after its entries: computed, never stored. Immutable.</summary>
public sealed class JobState
{
    /// <summary>The job.</summary>
    public required JobId Id { get; init; }

    /// <summary>What it is about.</summary>
    public required JobBrief Brief { get; init; }

    /// <summary>Whether work may be recorded.</summary>
    public required JobStatus Status { get; init; }

    /// <summary>All entries in order, voided ones too.</summary>
    public required IReadOnlyList<JobEntry> Entries { get; init; }

    /// <summary>Number of the last entry.</summary>
    public int LastNumber => Entries[^1].Number;

    /// <summary>The pins.</summary>
    public required PinRegister Register { get; init; }

    /// <summary>Pads by name: those of pins first in pin order, then the others as entered.</summary>
    public required IReadOnlyDictionary<PadId, PadLedger> Pads { get; init; }

    /// <summary>Touches that began and have neither been logged nor dropped.</summary>
    public required IReadOnlyList<Logged<TouchStart>> OpenTouches { get; init; }

    /// <summary>Exposures that count, as logged.</summary>
    public required IReadOnlyList<Logged<Exposure>> Exposures { get; init; }

    /// <summary>Measurements that count.</summary>
    public required IReadOnlyList<Logged<TimedMeasurement>> Measurements { get; init; }

    /// <summary>The check list with what was probed.</summary>
    public required CheckProgress Checks { get; init; }

    /// <summary>Wires that count.</summary>
    public required IReadOnlyList<Logged<JumperWire>> Wires { get; init; }

    /// <summary>Notes that count.</summary>
    public required IReadOnlyList<Logged<JobEvent.NoteTaken>> Notes { get; init; }

    /// <summary>Plan in force, or null.</summary>
    public required Logged<AcceptedPlan>? Plan { get; init; }

    /// <summary>Whether the cautions were shown in this job.</summary>
    public required bool CautionsShown { get; init; }

    /// <summary>Entries that were mistakes, by number.</summary>
    public required IReadOnlyDictionary<int, VoidedEntry> Voided { get; init; }

    /// <summary>Computes the state of a job.</summary>
    /// <param name="id">The job.</param>
    /// <param name="entries">Its entries, from number 1 without gaps; a shorter beginning gives the state as of then.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentException">There is no entry, the numbers have gaps, or the first entry does not open the job.</exception>
    public static JobState Replay(JobId id, IReadOnlyList<JobEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(entries);
        return new JobFold(id, entries).Run();
    }

    /// <summary>The job as it stood after an earlier entry.</summary>
    /// <param name="number">Number of that entry, 1 to <see cref="LastNumber"/>.</param>
    /// <returns>The earlier state.</returns>
    public JobState AsOf(int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, LastNumber);
        return Replay(Id, [.. Entries.Take(number)]);
    }
}
