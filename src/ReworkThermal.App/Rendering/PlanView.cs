using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports;

namespace ReworkThermal.App.Rendering;

/// <summary>How plans look.</summary>
/// <param name="report">The answer.</param>
internal sealed class PlanView(PlanReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(report.Title);
        page.Paragraph(report.Plans.Count > 0 ? PlanWords.Found(report.Plans.Count) : PlanWords.NoPlan);
        for (int i = 0; i < report.Plans.Count; i++)
        {
            WritePlan(page, i + 1, report.Plans[i]);
        }

        if (report.RuledOut.Count > 0)
        {
            page.Heading(PlanWords.RuledOutHeading);
            page.Table(["", ""], [.. report.RuledOut.Select(r => (IReadOnlyList<string>)[r.Subject, r.Reason])]);
        }

        page.List(PlanWords.BudgetHeading, report.Budget);
        page.List(CommonWords.Cautions, report.Cautions);
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("title", report.Title);
        json.WriteStartArray("plans");
        foreach (PlanLine plan in report.Plans)
        {
            json.WriteStartObject();
            WriteMembers(json, plan);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteRuledOut(json, "ruled_out", report.RuledOut);
        json.Sentences("budget", report.Budget);
        json.Sentences("cautions", report.Cautions);
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

    private static void WriteMembers(Utf8JsonWriter json, PlanLine plan)
    {
        json.Text("kind", plan.Kind);
        json.Text("alloy", plan.Alloy);
        json.Number("added_mass_mg", plan.AddedMass.Milligrams, 2);
        json.Number("flow_c", plan.Flow.DegreesCelsius, 2);
        json.Number("iron_set_c", plan.IronSetting?.DegreesCelsius, 0);
        json.Number("preheat_c", plan.Preheat?.DegreesCelsius, 0);
        json.Number("air_set_c", plan.AirSetting?.DegreesCelsius, 0);
        json.Number("air_flow_lpm", plan.AirFlow?.LitersPerMinute, 2);
        json.Number("dwell_s", plan.Dwell.Seconds, 2);
        json.Number("stop_s", plan.Stop.Seconds, 2);
        json.WriteNumber("passes", plan.Passes);
        json.Number("budget_share", plan.BudgetShare, 6);
        json.Number("budget_share_low", plan.BudgetShareLow, 6);
        json.Number("budget_share_high", plan.BudgetShareHigh, 6);
        json.Text("binding_limit", plan.BindingLimit);
        json.Number("time_to_flow_s", plan.TimeToFlow.Seconds, 2);
        json.Number("time_to_flow_p10_s", plan.TimeToFlowP10?.Seconds, 2);
        json.Number("time_to_flow_p50_s", plan.TimeToFlowP50?.Seconds, 2);
        json.Number("time_to_flow_p90_s", plan.TimeToFlowP90?.Seconds, 2);
        json.Sentences("reasons", plan.Reasons);
    }

    private static void WritePlan(Page page, int number, PlanLine plan)
    {
        page.Heading(PlanWords.PlanHeading(number, plan.Kind));
        List<IReadOnlyList<string>> rows =
        [
            [PlanWords.Add, plan.Alloy is { } alloy ? PlanWords.Amount(Numerals.Milligrams(plan.AddedMass), alloy) : PlanWords.Nothing],
            [PlanWords.MixFlow, Numerals.Celsius(plan.Flow, 0)],
            [PlanWords.Iron, plan.IronSetting is { } iron ? Numerals.Celsius(iron, 0) : PlanWords.NotUsed],
            [PlanWords.Preheat, plan.Preheat is { } preheat ? Numerals.Celsius(preheat, 0) : PlanWords.NotUsed],
        ];
        if (plan.AirSetting is { } air && plan.AirFlow is { } flow)
        {
            rows.Add([PlanWords.Air, PlanWords.AirSetting(Numerals.Celsius(air, 0), Numerals.Fixed(flow.LitersPerMinute, 0))]);
        }

        rows.Add([PlanWords.Dwell, PlanWords.DwellAndStop(Numerals.Seconds(plan.Dwell), Numerals.Seconds(plan.Stop))]);
        rows.Add([PlanWords.TimeToFlow, TimeToFlow(plan)]);
        rows.Add([PlanWords.Passes, plan.Passes.ToString(CultureInfo.InvariantCulture)]);
        rows.Add([PlanWords.BudgetShare, PlanWords.Range(Numerals.Percent(plan.BudgetShare), Numerals.Percent(plan.BudgetShareLow), Numerals.Percent(plan.BudgetShareHigh))]);
        rows.Add([PlanWords.BindingLimit, plan.BindingLimit]);
        page.Table(["", ""], rows);
        foreach (string reason in plan.Reasons)
        {
            page.Paragraph(reason, lead: "- ");
        }
    }

    private static string TimeToFlow(PlanLine plan) =>
        plan.TimeToFlowP10 is { } early && plan.TimeToFlowP50 is { } middle && plan.TimeToFlowP90 is { } late
            ? PlanWords.Sampled(Numerals.Seconds(middle), Numerals.Seconds(early), Numerals.Seconds(late))
            : PlanWords.CentralOnly(Numerals.Seconds(plan.TimeToFlow));
}
