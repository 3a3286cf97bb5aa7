using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering;

/// <summary>How two plans look side by side.</summary>
/// <param name="report">The whole answer.</param>
/// <param name="first">Number of one plan, from 1.</param>
/// <param name="second">Number of the other.</param>
internal sealed class PlanCompareView(PlanReport report, int first, int second) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(report.Title);
        page.Table(PlanWords.CompareColumns(first, second), [.. Rows().Select(r => (IReadOnlyList<string>)[r.Name, r.First, r.Second, r.First == r.Second ? PlanWords.Same : string.Empty])]);
        page.Blank();
        foreach (int number in new[] { first, second })
        {
            PlanLine plan = report.Plans[number - 1];
            page.Paragraph(PlanWords.CompareReason(number, plan.BudgetReason, plan.BindingLimit), lead: "- ");
        }

        page.List(PlanWords.OnlyWith(first), [.. Cautions(first).Except(Cautions(second))]);
        page.List(PlanWords.OnlyWith(second), [.. Cautions(second).Except(Cautions(first))]);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.WriteStartArray("compared");
        foreach (int number in new[] { first, second })
        {
            json.WriteStartObject();
            json.WriteNumber("plan", number);
            PlanJson.WriteMembers(json, report.Plans[number - 1]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private IEnumerable<string> Cautions(int number) => PlanCautions.Of([report.Plans[number - 1]]);

    private IEnumerable<(string Name, string First, string Second)> Rows()
    {
        PlanLine a = report.Plans[first - 1];
        PlanLine b = report.Plans[second - 1];
        return Figures(a).Zip(Figures(b), (x, y) => (x.Name, x.Value, y.Value));
    }

    private static IEnumerable<(string Name, string Value)> Figures(PlanLine plan)
    {
        yield return (PlanWords.Kind, plan.Kind);
        yield return (PlanWords.Add, plan.Alloy is null ? PlanWords.Nothing : $"{Numerals.Milligrams(plan.AddedMass)} {plan.Alloy}");
        yield return (PlanWords.MixFlow, Numerals.Celsius(plan.Flow, 0));
        yield return (PlanWords.Tool, ToolOf(plan.First));
        yield return (PlanWords.Board, plan.First.Preheater is null ? PlanWords.NoPreheat : Numerals.Celsius(plan.First.Board, 0));
        yield return (PlanWords.TimeToFlow, Numerals.Seconds(plan.First.TimeToFlow));
        yield return (PlanWords.Dwell, Numerals.Seconds(plan.First.Dwell));
        yield return (PlanWords.Stop, Numerals.Seconds(plan.First.Stop));
        yield return (PlanWords.PadAt, Numerals.Celsius(plan.First.PadPeak, 0));
        yield return (PlanWords.Passes, plan.Passes.ToString(CultureInfo.InvariantCulture));
        yield return (PlanWords.Refit, ToolOf(plan.Refit));
        yield return (PlanWords.RefitPad, Numerals.Celsius(plan.Refit.PadPeak, 0));
        yield return (PlanWords.BudgetShare, Numerals.Percent(plan.BudgetShare.Central));
        yield return (PlanWords.LaminateShare, Numerals.Percent(plan.LaminateShare.Central));
        yield return (PlanWords.FinalSolidus, Numerals.Celsius(plan.Final.Solidus, 0));
        yield return (PlanWords.FinalEnd, Numerals.Celsius(plan.Final.ScheilEnd, 0));
        yield return (PlanWords.Sampling, plan.TimeToFlowSpread is { } spread ? PlanWords.Finished(spread.FinishedInTime, spread.Samples) : PlanWords.NotSampled);
    }

    private static string ToolOf(TouchLine touch) => touch switch
    {
        { Iron: { } iron, IronSetting: { } set, Air: { } help } =>
            PlanWords.AfterAir($"{iron}, {Numerals.Celsius(set, 0)}", Numerals.Seconds(help.Lead), $"{help.Nozzle}, {Numerals.Celsius(help.Setting, 0)}"),
        { Iron: { } iron, IronSetting: { } set } => $"{iron}, {Numerals.Celsius(set, 0)}",
        { Air: { } air } => $"{air.Nozzle}, {Numerals.Celsius(air.Setting, 0)}",
        _ => PlanWords.NotUsed,
    };
}
