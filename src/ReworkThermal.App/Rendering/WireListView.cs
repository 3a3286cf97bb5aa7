using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.App.Rendering;

/// <summary>How the wires of a job look.</summary>
/// <param name="state">The job.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class WireListView(JobState state, IReadOnlyList<string> notes) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(JobWords.Title(state));
        if (state.Wires.Count == 0)
        {
            page.Paragraph(WireWords.NoWires);
        }
        else
        {
            page.Table(WireWords.ListColumns, [.. state.Wires.Select(w => (IReadOnlyList<string>)
            [
                w.What.From.Value,
                w.What.To.Value,
                EventWords.Of(w.What),
                Soldered(w.What).ToString(CultureInfo.InvariantCulture),
                NoteOf(w.Number),
            ])]);
            page.List(CommonWords.Cautions, WireWords.Cautions);
        }

        page.List(CommonWords.Notes, notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", state.Id.Value);
        json.WriteStartArray("wires");
        foreach (Logged<JumperWire> wire in state.Wires)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", wire.Number);
            json.Text("from", wire.What.From.Value);
            json.Text("to", wire.What.To.Value);
            json.WriteNumber("awg", wire.What.Gauge.Number);
            json.Number("length_mm", wire.What.Length.Millimeters, 3);
            json.Text("insulation", WireWords.Name(wire.What.Insulation));
            json.Text("pair", wire.What.Pair is { } pair ? VisibleText.Of(pair) : null);
            json.WriteNumber("touches_logged", Soldered(wire.What));
            json.Text("note", NoteOf(wire.Number));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Sentences("notes", notes);
    }

    // A wire costs one touch at each end; how many of them are in the record shows whether one was forgotten.
    private int Soldered(JumperWire wire) => state.Exposures.Count(e =>
        e.What.Purpose is TouchPurpose.Wire && e.What.Pads.Any(p => p.Pad == wire.From || p.Pad == wire.To));

    private string NoteOf(int number) =>
        state.Entries[number - 1].What is JobEvent.WireRun { Note: { } note } ? VisibleText.Of(note) : string.Empty;
}
