using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Rendering;

/// <summary>How recorded entries are confirmed: what was recorded, and what is next.</summary>
/// <param name="entries">The entries, at least one.</param>
/// <param name="state">The job with them.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class RecordedView(IReadOnlyList<JobEntry> entries, JobState state, IReadOnlyList<string> notes) : IRenderedReport
{
    /// <summary>Confirms one entry.</summary>
    internal RecordedView(JobEntry entry, JobState state, IReadOnlyList<string> notes)
        : this([entry], state, notes)
    {
    }

    /// <inheritdoc/>
    public string Kept => entries.Count == 1
        ? JobWords.Recorded(entries[0].Number, EventWords.Of(entries[0].What))
        : JobWords.RecordedMany(entries.Count, entries[0].Number, entries[^1].Number);

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(JobWords.Title(state));
        page.Paragraph(Kept);
        page.List(JobWords.NextHeading, [EventWords.Of(NextStep.Of(state))]);
        page.List(CommonWords.Notes, notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", state.Id.Value);
        json.Text("label", VisibleText.Of(state.Brief.Label));
        json.WriteNumber("first_entry", entries[0].Number);
        json.WriteNumber("last_entry", entries[^1].Number);
        json.Sentences("recorded", entries.Select(e => EventWords.Of(e.What)));
        json.Text("next", EventWords.Of(NextStep.Of(state)));
        json.Sentences("notes", notes);
    }
}
