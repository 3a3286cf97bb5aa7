using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering;

/// <summary>How one pad looks: its gauges, the next touch, the pull check.</summary>
/// <param name="report">The answer.</param>
internal sealed class PadView(PadReport report) : IRenderedReport
{
    private HeatBudget Budget => report.Pad.Budget;

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(BudgetWords.PadTitle(report.Pad.Ledger.Pad, BudgetView.NameOf(report.Pad), report.Job));
        page.Paragraph(BudgetWords.Headline(
            Budget.Band.Word(),
            Numerals.Percent(Budget.Share.Central),
            Numerals.Percent(Budget.Share.Low),
            Numerals.Percent(Budget.Share.High),
            Sentence.Capital(Budget.Reason)));
        page.Paragraph(BudgetWords.Meaning);
        page.List(BudgetWords.Incomplete, report.Pad.NotCounted > 0 ? [BudgetWords.Missing(report.Pad.NotCounted)] : []);
        page.Heading(BudgetWords.GaugesHeading);
        page.Table(BudgetWords.GaugeColumns, [.. Budget.Gauges.Select(GaugeRow)]);
        page.Paragraph(BudgetWords.BarMeaning);
        WriteNext(page);
        WritePull(page);
        page.List(BudgetWords.RestsOn, RestsOn());
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", report.Job.Value);
        json.Text("label", Core.Jobs.VisibleText.Of(report.Label));
        BudgetView.WriteMembers(json, report.Pad);
        json.Number("laminate_share_if_cooler", Math.Min(Budget.LaminateIfCooler, 1e9), 6);
        json.Number("laminate_share_if_hotter", Math.Min(Budget.LaminateIfHotter, 1e9), 6);
        json.Spread("intermetallic_um", Budget.IntermetallicUm);
        ForecastJson.Write(json, report.Next);
        json.Number("now_c", report.Now.DegreesCelsius, 2);
        DamageJson.WritePull(json, "pull_now", report.PullNow);
        json.Text("meaning", BudgetWords.Meaning);
        json.Sentences("omissions", Budget.Omissions.Select(o => o.Reason));
        json.Sentences("assumptions", Budget.Assumptions);
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    private void WriteNext(Page page)
    {
        page.Heading(BudgetWords.NextHeading);
        if (report.Next is not ForecastOutcome.Made { Forecast: { } next })
        {
            page.Paragraph(report.Next is ForecastOutcome.Failed failed ? failed.Reason + "." : BudgetWords.NoSettings);
            return;
        }

        TouchCost cost = next.Cost;
        page.Table(["", ""],
        [
            [BudgetWords.AtSettings, BudgetWords.DwellAt(EventWords.Tools(next.Tools), Numerals.Seconds(next.Dwell))],
            [BudgetWords.Flows, next.Simulation.TimeToFlow is { } time ? Numerals.Seconds(time) : BudgetWords.NeverFlows],
            [BudgetWords.PadPeak, Numerals.Fixed(next.Simulation.Pad.PeakCelsius, 0) + " °C"],
            [BudgetWords.Costs, BudgetWords.CostOf(Numerals.Percent(cost.AddedShare.Central), Numerals.Percent(cost.AddedShare.Low), Numerals.Percent(cost.AddedShare.High))],
            [BudgetWords.Leaves, BudgetWords.LeavesAt(cost.After.Band.Word(), Numerals.Percent(cost.After.Share.Central), cost.After.WorstBand.Word())],
            [BudgetWords.LongestSafe, SafeOf(next)],
            [BudgetWords.CoolFirst, CoolOf(next.CoolDown)],
        ]);
    }

    private void WritePull(Page page)
    {
        page.Heading(BudgetWords.PullHeading);
        List<IReadOnlyList<string>> rows =
        [
            [BudgetWords.Now, BudgetWords.PullAt(Numerals.Celsius(report.Now, 0))],
            [string.Empty, BudgetWords.Verdict(report.PullNow.Verdict)],
        ];
        PullCheck shown = report.PullNow;
        if (report.Next is ForecastOutcome.Made { Forecast: { } next })
        {
            rows.Add([BudgetWords.AtItsEnd, BudgetWords.Verdict(next.Pull.Verdict)]);
            shown = next.Pull;
        }

        rows.Add([BudgetWords.Holds, BudgetWords.Force(Numerals.Fixed(shown.CapacityN.Central, 2), Numerals.Fixed(shown.CapacityN.Low, 2), Numerals.Fixed(shown.CapacityN.High, 2)) + $" ({shown.Support.Word()})"]);
        page.Table(["", ""], rows);
        page.Blank();
        page.Table(BudgetWords.PullColumns, [.. shown.Margins.Select(m => (IReadOnlyList<string>)
        [
            m.Demand.Word(),
            Numerals.Fixed(m.Force.Central.Newtons, 2) + " N",
            Numerals.Fixed(m.Margin.Central, 1),
            PlanWords.FromTo(Numerals.Fixed(m.Margin.Low, 1), Numerals.Fixed(m.Margin.High, 1)),
            m.Outcome.Word(),
        ])]);
        EdgePress press = shown.PressedEdge;
        page.Paragraph(BudgetWords.PressedEdge(
            Numerals.Fixed(press.Force.Central.Newtons, 0),
            Numerals.Fixed(press.Force.Central.Newtons * press.LiftingShare, 1),
            Numerals.Fixed(press.Margin.Central, 1),
            press.Outcome.Word()));
    }

    private static string SafeOf(TouchForecast next)
    {
        string within = BudgetWords.Within(Numerals.Percent(next.Limit.Share));
        return next.Safe switch
        {
            SafeDwell.UpTo upTo => BudgetWords.SafeUpTo(Numerals.Seconds(upTo.Longest), within),
            SafeDwell.WholeRange whole => BudgetWords.SafeBeyond(Numerals.Seconds(whole.Asked), within),
            SafeDwell.None none => BudgetWords.SafeNone(none.Reason),
            _ => throw new InvalidOperationException("unknown kind of dwell"),
        };
    }

    private static string CoolOf(CoolDown cool)
    {
        string target = Numerals.Celsius(cool.Target, 0);
        return cool switch
        {
            CoolDown.Wait wait => BudgetWords.Wait(Numerals.Seconds(wait.Time), target),
            CoolDown.NotWithin not => BudgetWords.StillHot(Numerals.Seconds(not.Asked), Numerals.Celsius(not.End, 0), target),
            _ => BudgetWords.Cool(target),
        };
    }

    private List<string> RestsOn() =>
    [
        .. Budget.Assumptions.Select(Sentence.Of),
        .. Budget.Omissions.Select(o => Sentence.Of(o.Reason)),
        string.Create(CultureInfo.InvariantCulture, $"{BudgetWords.Intermetallic}: {Budget.IntermetallicUm.Central:0.0} µm ({Budget.IntermetallicUm.Low:0.0} to {Budget.IntermetallicUm.High:0.0} µm)."),
    ];

    private static IReadOnlyList<string> GaugeRow(Gauge gauge) =>
    [
        gauge.Kind.Word(),
        Numerals.Percent(gauge.Share.Central),
        PlanWords.FromTo(Numerals.Percent(gauge.Share.Low), Numerals.Percent(gauge.Share.High)),
        ShareBar.Of(gauge.Share.Central, gauge.Share.High),
        gauge.Band.Word(),
        gauge.WorstBand.Word(),
        gauge.Support.Word(),
        gauge.Unit,
    ];
}
