namespace ReworkThermal.Core.Jobs.Pins;

/// <summary>A pin with what was seen of its pad, as a table of pins holds it.</summary>
/// <param name="Pin">The pin.</param>
/// <param name="State">State of its pad, or null when nobody looked.</param>
/// <param name="Note">What was noted, or null.</param>
public sealed record PinRow(Pin Pin, PadState? State, string? Note)
{
    /// <summary>The events that enter rows into a job: the pins, then what was seen of each.</summary>
    /// <param name="rows">The rows, at least one.</param>
    /// <returns>Events in order.</returns>
    public static IReadOnlyList<JobEvent> Events(IReadOnlyList<PinRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        return
        [
            new JobEvent.PinsRegistered([.. rows.Select(r => r.Pin)]),
            .. rows.Where(r => r.State is not null).Select(r => new JobEvent.PadStateSeen(r.Pin.Number, r.State!.Value, r.Note)),
            .. rows.Where(r => r is { State: null, Note: not null }).Select(r => new JobEvent.NoteTaken(r.Note!, r.Pin.Number)),
        ];
    }

    /// <summary>The pins of a job with what was seen last.</summary>
    /// <param name="state">The job.</param>
    /// <returns>One row per pin, by row and position.</returns>
    public static IReadOnlyList<PinRow> Of(JobState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        Dictionary<PadId, string> notes = [];
        foreach (JobEntry entry in state.Entries.Where(e => !state.Voided.ContainsKey(e.Number)))
        {
            (PadId? pad, string? note) = entry.What switch
            {
                JobEvent.PadStateSeen seen => (seen.Pad, seen.Note),
                JobEvent.NoteTaken taken => (taken.Pad, taken.Text),
                _ => (null, null),
            };
            if (pad is not null && note is not null)
            {
                notes[pad] = note;
            }
        }

        return [.. state.Register.Pins.Select(p => new PinRow(p, state.Pads[p.Number].State, notes.GetValueOrDefault(p.Number)))];
    }
}
