using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Plans;
using PlanCautions = ReworkThermal.App.Rendering.PlanCautions;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>The plan: the request with complaints beside the lines, the run, or the answer.</summary>
internal static class PlanDrawing
{
    private const int ValueColumn = 23;
    private const int ComplaintColumn = 46;
    private const int BarLength = 40;

    internal static void Draw(Sheet sheet, Area body, BenchState state)
    {
        if (state.Plan is { ShowsAnswer: true, Report: { } report, Running: null })
        {
            Answer(sheet, body, state.Plan, report);
            return;
        }

        PlanField[] fields = Enum.GetValues<PlanField>();
        sheet.Rule(body, 0, ScreenPlanWords.RequestTitle(state.Plan.Row + 1, fields.Length));
        int room = Math.Max(1, body.Height - 4);
        int first = ListWindow.First(state.Plan.Row, fields.Length, room);
        Area list = body.Rows(1, room);
        foreach ((int row, PlanField field) in fields.Skip(first).Take(room).Index())
        {
            string text = state.Plan.Form[field];
            bool usual = text.Length == 0 && PlanFormRules.IsUsualWhenEmpty(field);
            sheet.Put(list, 2, row, ScreenPlanWords.Field(field), Ink.Quiet);
            sheet.Put(list, ValueColumn, row, text.Length > 0 ? text : usual ? ScreenPlanWords.Usual(field) : ScreenWords.Unknown, text.Length > 0 ? Ink.Plain : Ink.Quiet);
            ListWindow.Mark(sheet, list, row, state.Plan.Row == first + row);
            if (state.Plan.Complaints.TryGetValue(field, out string? complaint))
            {
                sheet.PutCut(list, Math.Max(ComplaintColumn, ValueColumn + text.Length + 2), row, $"! {complaint}", Ink.Care);
            }
        }

        Area below = body.Rows(room + 1);
        if (state.Plan.Running is { } running)
        {
            sheet.Rule(below, 0, ScreenPlanWords.RunningTitle);
            int at = sheet.Put(below, 2, 1, ShareBar.Of(running.Share, BarLength, sheet.Plain) + " ", Ink.Trace);
            sheet.Put(below, at, 1, ScreenPlanWords.Progress(running.Share, running.Doing));
        }
        else
        {
            // Beside the line there may not be room for all of a complaint.
            bool wrong = state.Plan.Complaints.TryGetValue(fields[state.Plan.Row], out string? whole);
            sheet.PutParagraph(below, 1, wrong ? $"! {whole}" : state.Shelf is null ? ScreenWords.ReadingShelf : ScreenPlanWords.KeptNote, wrong ? Ink.Care : Ink.Quiet, 2);
        }
    }

    private static void Answer(Sheet sheet, Area body, PlanState plan, PlanReport report)
    {
        sheet.Rule(body, 0, $"{ScreenPlanWords.AnswerTitle}: {report.Title}");
        int row = 1;
        foreach ((int i, PlanLine line) in report.Plans.Index())
        {
            sheet.PutCut(body, 2, row, $"{i + 1}  {line.Kind}: {ScreenPlanWords.Added(line)}; {ScreenPlanWords.Times(line)}");
            ListWindow.Mark(sheet, body, row++, plan.Chosen == i);
            sheet.PutCut(body, 5, row++, $"{ScreenPlanWords.Settings(line.First)}; {ScreenPlanWords.Cost(line)}{ScreenPlanWords.InTime(line.TimeToFlowSpread)}", Ink.Strong);
        }

        if (report.Plans.Count == 0)
        {
            sheet.Put(body, 2, row++, ScreenPlanWords.NoPlan, Ink.Care);
        }

        Area below = body.Rows(row);
        sheet.Rule(below, 0, ScreenPlanWords.DetailsTitle(report.Plans.Count > 0, plan.LearnedFrom, plan.Sampling?.Share));
        Details(sheet, below.Rows(1), Lines(plan, report), plan.Scroll);
    }

    private static List<(string Text, Ink Ink)> Lines(PlanState plan, PlanReport report)
    {
        List<(string Text, Ink Ink)> lines = [];
        if (report.Plans.Count > 0)
        {
            PlanLine chosen = report.Plans[Math.Min(plan.Chosen, report.Plans.Count - 1)];
            lines.AddRange(ScreenPlanWords.Reading(chosen).Select(r => (r, Ink.Plain)));
            lines.AddRange(PlanCautions.Of([chosen]).Select(c => (c, Ink.Care)));
        }
        else if (report.NoPlanReason is { } reason)
        {
            lines.Add((reason, Ink.Care));
        }

        lines.AddRange(report.RuledOut.Select(r => ($"{ScreenPlanWords.RuledOut}: {r.Subject}: {r.Reason}", Ink.Quiet)));
        lines.AddRange(report.Notes.Concat(report.Budget).Select(n => (ScreenPlanWords.Assumed(n), Ink.Quiet)));
        return lines;
    }

    /// <summary>Draws paragraphs from one on.</summary>
    private static void Details(Sheet sheet, Area area, List<(string Text, Ink Ink)> lines, int scroll)
    {
        int row = 0;
        foreach ((string text, Ink ink) in lines.Skip(Math.Min(scroll, Math.Max(0, lines.Count - 1))))
        {
            if (row < area.Height)
            {
                sheet.Put(area, 1, row, ink == Ink.Care ? "!" : "-", ink);
                row = sheet.PutParagraph(area, row, text, ink, 3);
            }
        }
    }
}
