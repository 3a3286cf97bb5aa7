using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Rendering;

/// <summary>How the touches of a job look, voided and unfinished ones too.</summary>
/// <param name="state">The job.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class TouchListView(JobState state, IReadOnlyList<string> notes) : IRenderedReport
{
    private IEnumerable<(int Number, Exposure Touch)> Touches => state.Entries
        .Where(e => e.What is JobEvent.ExposureLogged)
        .Select(e => (e.Number, ((JobEvent.ExposureLogged)e.What).Exposure));

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(JobWords.Title(state));
        List<IReadOnlyList<string>> rows = [.. Touches.Select(t => Row(t.Number, t.Touch))];
        if (rows.Count == 0)
        {
            page.Paragraph(JobWords.NoTouches);
        }
        else
        {
            page.Table(JobWords.TouchColumns, rows);
        }

        page.List(JobWords.NextHeading, [.. state.OpenTouches.Select(t => JobWords.Interrupted(t.Number))]);
        page.List(CommonWords.Notes, notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", state.Id.Value);
        json.WriteStartArray("touches");
        foreach ((int number, Exposure touch) in Touches)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", number);
            json.WriteString("began_at", touch.StartedAt.UtcDateTime);
            json.Text("purpose", touch.Purpose.Word());
            json.Sentences("pads", touch.Pads.Select(p => p.Pad.Value));
            json.Number("dwell_s", touch.Dwell.Seconds, 3);
            json.Text("tools", EventWords.Tools(touch.Tools));
            json.Text("added_alloy", touch.Added is { } added ? VisibleText.Of(added.Designation) : null);
            json.Number("added_mass_mg", touch.Added?.Mass?.Milligrams, 3);
            json.Number("peak_c", Peak(touch), 2);
            json.Text("temperature", OriginOf(touch));
            json.WriteBoolean("voided", state.Voided.ContainsKey(number));
            json.Text("void_reason", state.Voided.TryGetValue(number, out VoidedEntry? voided) ? VisibleText.Of(voided.Reason) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("unfinished");
        foreach (Logged<TouchStart> open in state.OpenTouches)
        {
            json.WriteNumberValue(open.Number);
        }

        json.WriteEndArray();
        json.Sentences("notes", notes);
    }

    private IReadOnlyList<string> Row(int number, Exposure touch) =>
    [
        number.ToString(CultureInfo.InvariantCulture),
        JobWords.Time(touch.StartedAt),
        touch.Purpose.Word(),
        string.Join(", ", touch.Pads.Select(p => p.Pad)),
        Numerals.Seconds(touch.Dwell),
        EventWords.Tools(touch.Tools),
        Peak(touch) is { } peak ? Numerals.Fixed(peak, 0) : JobWords.Unknown,
        OriginOf(touch),
        state.Voided.TryGetValue(number, out VoidedEntry? voided) ? JobWords.VoidedBecause(VisibleText.Of(voided.Reason)) : VisibleText.Of(touch.Note ?? string.Empty),
    ];

    private static double? Peak(Exposure touch) =>
        touch.Pads.Where(p => p.Series is not null).Select(p => (double?)p.Series!.History.PeakCelsius).DefaultIfEmpty(null).Max();

    private static string OriginOf(Exposure touch) => touch.Pads.FirstOrDefault(p => p.Series is not null)?.Series?.Origin switch
    {
        SeriesOrigin.Measured => JobWords.MeasuredTemperature,
        SeriesOrigin.Simulated => JobWords.SimulatedTemperature,
        _ => JobWords.NoTemperature,
    };
}
