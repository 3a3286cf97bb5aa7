using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Rendering;

/// <summary>How a job looks: what it is about, what was last done, what is next.</summary>
/// <param name="state">The job.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class JobView(JobState state, IReadOnlyList<string> notes) : IRenderedReport
{
    private const int LastEntries = 5;

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(JobWords.Title(state));
        page.Table(["", ""], [.. Brief().Select(b => (IReadOnlyList<string>)[b.Name, b.Value])]);
        page.List(JobWords.HistoryHeading, [.. Last().Select(Line)]);
        page.List(JobWords.NextHeading, [EventWords.Of(NextStep.Of(state))]);
        page.List(JobWords.PlanHeading, state.Plan is { } plan ? [VisibleText.Of(plan.What.Summary)] : []);
        if (state.Pads.Count > 0)
        {
            page.Heading(JobWords.PadsHeading);
            page.Table(JobWords.PadColumns, [.. state.Pads.Values.Select(Pad)]);
        }

        if (state.Checks.Lines.Count > 0)
        {
            page.List(JobWords.ChecksHeading, [JobWords.Coverage(state.Checks.Passed, state.Checks.Failed, state.Checks.Open, state.Checks.Stale)]);
        }

        page.List(JobWords.WiresHeading, [.. state.Wires.Select(w => JobWords.Wire(w.What.From, w.What.To, EventWords.Of(w.What)))]);
        page.List(CommonWords.Notes, notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", state.Id.Value);
        json.Text("label", VisibleText.Of(state.Brief.Label));
        json.Text("status", JobWords.Status(state.Status));
        json.Text("board", Shown(state.Brief.Board));
        json.Text("joint", Shown(state.Brief.Joint));
        json.Text("connector", Shown(state.Brief.Connector));
        json.Text("base_solder", Shown(state.Brief.BaseSolder));
        json.WriteBoolean("lead_free_only", state.Brief.LeadFreeOnly);
        json.WriteNumber("entries", state.LastNumber);
        json.WriteStartArray("last_done");
        foreach (JobEntry entry in Last())
        {
            json.WriteStartObject();
            json.WriteNumber("entry", entry.Number);
            json.WriteString("at", entry.At.UtcDateTime);
            json.Text("what", EventWords.Of(entry.What));
            json.WriteBoolean("voided", state.Voided.ContainsKey(entry.Number));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Text("next", EventWords.Of(NextStep.Of(state)));
        json.Text("plan", Shown(state.Plan?.What.Summary));
        json.WriteStartArray("pads");
        foreach (PadLedger pad in state.Pads.Values)
        {
            json.WriteStartObject();
            json.Text("pad", pad.Pad.Value);
            json.Text("name", Shown(pad.Pin?.Name ?? pad.Description));
            json.Text("as_arrived", pad.AsArrived?.Word());
            json.Text("state", pad.State?.Word());
            json.Text("earlier_heat", pad.Prior?.Word());
            json.WriteNumber("touches", pad.Heats.Count);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("checks");
        json.WriteNumber("passed", state.Checks.Passed);
        json.WriteNumber("failed", state.Checks.Failed);
        json.WriteNumber("open", state.Checks.Open);
        json.WriteNumber("stale", state.Checks.Stale);
        json.WriteBoolean("proven", state.Checks.Proven);
        json.WriteEndObject();
        json.Sentences("notes", notes);
    }

    private static string? Shown(string? text) => text is null ? null : VisibleText.Of(text);

    private IEnumerable<JobEntry> Last() => state.Entries.TakeLast(LastEntries).Reverse();

    private string Line(JobEntry entry) => string.Create(
        CultureInfo.InvariantCulture,
        $"{entry.Number}, {JobWords.Time(entry.At)}: {EventWords.Of(entry.What)}{(state.Voided.ContainsKey(entry.Number) ? JobWords.Voided : string.Empty)}");

    private IEnumerable<(string Name, string Value)> Brief()
    {
        JobBrief brief = state.Brief;
        yield return (JobWords.StatusName, JobWords.Status(state.Status));
        yield return (RecordWords.Board, Shown(brief.Board) ?? JobWords.NotStated);
        yield return (RecordWords.Joint, Shown(brief.Joint) ?? JobWords.NotStated);
        yield return (RecordWords.Connector, Shown(brief.Connector) ?? JobWords.NotStated);
        yield return (RecordWords.SolderOnArrival, Shown(brief.BaseSolder) ?? JobWords.NotStated);
        if (brief.LeadFreeOnly)
        {
            yield return (JobWords.LimitName, JobWords.LeadFreeOnly);
        }
    }

    private static IReadOnlyList<string> Pad(PadLedger pad) =>
    [
        pad.Pad.Value,
        VisibleText.Of(pad.Pin?.Name ?? pad.Description ?? string.Empty),
        pad.AsArrived?.Word() ?? JobWords.Unknown,
        pad.State?.Word() ?? JobWords.Unknown,
        pad.Heats.Count.ToString(CultureInfo.InvariantCulture),
        pad.Prior?.Word() ?? JobWords.NotStated,
    ];
}
