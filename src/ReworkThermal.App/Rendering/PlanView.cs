using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering;

/// <summary>How plans look.</summary>
/// <param name="report">The answer.</param>
internal sealed class PlanView(PlanReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(report.Title);
        page.Paragraph(report.Joint);
        page.Paragraph(report.Plans.Count > 0 ? PlanWords.Found(report.Plans.Count) : PlanWords.NoPlan(report.NoPlanReason ?? string.Empty));
        if (report.Plans.Count > 0)
        {
            page.Blank();
            page.Table(PlanWords.OverviewColumns, [.. report.Plans.Select(Overview)]);
        }

        for (int i = 0; i < report.Plans.Count; i++)
        {
            PlanPage.Write(page, i + 1, report.Plans[i]);
        }

        if (report.RuledOut.Count > 0)
        {
            page.Heading(PlanWords.RuledOutHeading);
            page.Table(["", ""], [.. report.RuledOut.Select(r => (IReadOnlyList<string>)[r.Subject, r.Reason])]);
        }

        page.List(PlanWords.BudgetHeading, report.Budget);
        page.List(CommonWords.Cautions, [.. PlanCautions.Of(report.Plans), .. PlanWords.BenchCautions]);
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("title", report.Title);
        json.Text("joint", report.Joint);
        json.WriteStartArray("plans");
        foreach (PlanLine plan in report.Plans)
        {
            json.WriteStartObject();
            PlanJson.WriteMembers(json, plan);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Text("no_plan_reason", report.NoPlanReason);
        WriteRuledOut(json, "ruled_out", report.RuledOut);
        json.Sentences("budget", report.Budget);
        json.Sentences("cautions", PlanWords.BenchCautions);
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    /// <summary>Writes a list of what was left out.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name.</param>
    /// <param name="lines">What was left out.</param>
    internal static void WriteRuledOut(Utf8JsonWriter json, string name, IEnumerable<RuledOut> lines)
    {
        json.WriteStartArray(name);
        foreach (RuledOut line in lines)
        {
            json.WriteStartObject();
            json.Text("subject", line.Subject);
            json.Text("reason", line.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IReadOnlyList<string> Overview(PlanLine plan, int index) =>
    [
        (index + 1).ToString(CultureInfo.InvariantCulture),
        plan.Kind,
        ToolOf(plan.First),
        plan.First.Preheater is null ? PlanWords.NotUsed : Numerals.Celsius(plan.First.Board, 0),
        Numerals.Seconds(plan.First.Dwell),
        plan.Passes.ToString(CultureInfo.InvariantCulture),
        Numerals.Percent(plan.BudgetShare.Central),
        plan.Alloy is null ? PlanWords.Nothing : $"{Numerals.Milligrams(plan.AddedMass)} {plan.Alloy}",
    ];

    private static string ToolOf(TouchLine touch) => touch switch
    {
        { IronSetting: { } iron, Air: { } help } => PlanWords.WithAir(Numerals.Celsius(iron, 0), Numerals.Celsius(help.Setting, 0)),
        { IronSetting: { } iron } => Numerals.Celsius(iron, 0),
        { Air: { } air } => PlanWords.ByAir(Numerals.Celsius(air.Setting, 0)),
        _ => PlanWords.NotUsed,
    };
}
