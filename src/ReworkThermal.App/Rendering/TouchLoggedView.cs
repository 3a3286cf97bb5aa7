using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering;

/// <summary>Confirms a logged touch and says what it cost.</summary>
/// <param name="entry">The entry.</param>
/// <param name="state">The job with it.</param>
/// <param name="costs">What it cost each pad; empty when pads cannot be judged yet.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class TouchLoggedView(JobEntry entry, JobState state, IReadOnlyList<PadCost> costs, IReadOnlyList<string> notes) : IRenderedReport
{
    /// <inheritdoc/>
    public string Kept => JobWords.Recorded(entry.Number, EventWords.Of(entry.What));

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(JobWords.Title(state));
        page.Paragraph(Kept);
        if (costs.Count > 0)
        {
            page.Heading(TouchWords.CostHeading);
            page.Table(TouchWords.CostColumns, [.. costs.Select(Row)]);
        }

        page.List(JobWords.NextHeading, [EventWords.Of(NextStep.Of(state))]);
        page.List(CommonWords.Notes, notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", state.Id.Value);
        json.WriteNumber("entry", entry.Number);
        json.Text("recorded", EventWords.Of(entry.What));
        json.WriteStartArray("pads");
        foreach (PadCost cost in costs)
        {
            PadStep? step = StepOf(cost);
            json.WriteStartObject();
            json.Text("pad", cost.After.Ledger.Pad.Value);
            json.Number("peak_c", step?.Interface?.PeakCelsius, 2);
            json.WriteBoolean("melted", step?.Melted ?? false);
            json.Spread("budget_share_before", cost.Before.Share);
            json.Spread("budget_share_after", cost.After.Budget.Share);
            json.Text("band", cost.After.Budget.Band.Word());
            json.Text("worst_band", cost.After.Budget.WorstBand.Word());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Text("next", EventWords.Of(NextStep.Of(state)));
        json.Sentences("notes", notes);
    }

    private PadStep? StepOf(PadCost cost) => cost.After.Steps.FirstOrDefault(s => s.Heat.Number == entry.Number);

    private IReadOnlyList<string> Row(PadCost cost)
    {
        PadStep? step = StepOf(cost);
        return
        [
            cost.After.Ledger.Pad.Value,
            step?.Interface is { } history ? Numerals.Fixed(history.PeakCelsius, 0) : JobWords.Unknown,
            TouchWords.Melted(step?.Melted == true),
            Numerals.Percent(cost.Before.Share.Central),
            Numerals.Percent(cost.After.Budget.Share.Central),
            PlanWords.FromTo(Numerals.Percent(cost.After.Budget.Share.Low), Numerals.Percent(cost.After.Budget.Share.High)),
            cost.After.Budget.Band.Word(),
        ];
    }
}
