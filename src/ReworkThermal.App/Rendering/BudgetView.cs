using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering;

/// <summary>How the heat budgets of a job look.</summary>
/// <param name="report">The answer.</param>
internal sealed class BudgetView(BudgetReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(BudgetWords.JobTitle(report.Job, report.Label));
        if (report.Pads.Count == 0)
        {
            page.Paragraph(BudgetWords.NoPads);
        }
        else
        {
            page.Table(BudgetWords.JobColumns, [.. report.Pads.Select(Row)]);
            page.Blank();
            page.Paragraph(BudgetWords.BarMeaning);
            page.Paragraph(BudgetWords.Meaning);
        }

        page.List(BudgetWords.Incomplete, [.. report.Pads.Where(p => p.NotCounted > 0).Select(p => BudgetWords.OfPad(p.Ledger.Pad, BudgetWords.Missing(p.NotCounted)))]);
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", report.Job.Value);
        json.Text("label", Core.Jobs.VisibleText.Of(report.Label));
        json.WriteStartArray("pads");
        foreach (PadAccount pad in report.Pads)
        {
            json.WriteStartObject();
            WriteMembers(json, pad);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Text("meaning", BudgetWords.Meaning);
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    /// <summary>Writes one pad; also used where it is asked about alone.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="pad">The pad.</param>
    internal static void WriteMembers(Utf8JsonWriter json, PadAccount pad)
    {
        HeatBudget budget = pad.Budget;
        json.Text("pad", pad.Ledger.Pad.Value);
        json.Text("name", NameOf(pad));
        json.Text("band", budget.Band.Word());
        json.Text("worst_band", budget.WorstBand.Word());
        json.Spread("budget_share", budget.Share);
        json.Spread("headroom_share", budget.Headroom);
        json.Text("governing", budget.Governing.Kind.Word());
        json.Text("reason", budget.Reason);
        json.WriteNumber("touches", pad.Steps.Count);
        json.WriteNumber("touches_not_counted", pad.NotCounted);
        json.Spread("melts", pad.Damage.Melts);
        json.Number("peak_c", pad.Damage.PeakCelsius, 2);
        json.Text("earlier_heat", pad.Prior.Name);
        json.WriteBoolean("earlier_heat_assumed", pad.PriorIsAssumed);
        json.Text("solder_now", pad.Contents.Fractions.ToString());
        DamageJson.WriteGauges(json, budget);
    }

    /// <summary>What a pad is called besides its number.</summary>
    internal static string? NameOf(PadAccount pad) =>
        (pad.Ledger.Pin?.Name ?? pad.Ledger.Description) is { } name ? Core.Jobs.VisibleText.Of(name) : null;

    private static IReadOnlyList<string> Row(PadAccount pad)
    {
        Spread share = pad.Budget.Share;
        return
        [
            pad.Ledger.Pad.Value,
            NameOf(pad) ?? string.Empty,
            Numerals.Percent(share.Central),
            PlanWords.FromTo(Numerals.Percent(share.Low), Numerals.Percent(share.High)),
            ShareBar.Of(share.Central, share.High),
            pad.Budget.Band.Word() + (pad.NotCounted > 0 ? "?" : string.Empty),
            pad.Budget.Governing.Kind.Word(),
            pad.Steps.Count.ToString(CultureInfo.InvariantCulture),
            Numerals.Fixed(pad.Damage.Melts.Central, 0),
            BudgetWords.Prior(pad.Prior.Name, pad.PriorIsAssumed),
        ];
    }
}
