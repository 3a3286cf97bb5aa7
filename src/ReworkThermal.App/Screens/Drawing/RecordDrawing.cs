using System.Globalization;
using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>The record: entries, latest first, or the checks.</summary>
internal static class RecordDrawing
{
    internal static void Draw(Sheet sheet, Area body, BenchState state)
    {
        if (state.Job is not { } job)
        {
            sheet.Put(body, 2, 1, ScreenWords.OpenJobFirst);
        }
        else if (state.Record.ShowsChecks)
        {
            Checks(sheet, body, state, job.Checks);
        }
        else
        {
            Entries(sheet, body, state, job);
        }
    }

    private static void Entries(Sheet sheet, Area body, BenchState state, JobState job)
    {
        sheet.Rule(body, 0, ScreenRecordWords.EntriesTitle);
        int count = job.Entries.Count;
        int chosen = Math.Min(state.Record.EntryRow, count - 1);

        // The chosen entry is written out below the list, since a line may be longer than the screen is wide.
        Area list = body.Rows(1, body.Height - 4);
        int first = ListWindow.First(chosen, count, list.Height);
        for (int row = 0; row < list.Height && first + row < count; row++)
        {
            JobEntry entry = job.Entries[count - 1 - first - row];
            bool isVoid = job.Voided.ContainsKey(entry.Number);
            string mark = isVoid ? ScreenRecordWords.Void + " " : string.Empty;
            sheet.PutCut(list, 2, row, string.Create(CultureInfo.InvariantCulture, $"{entry.Number,4}  {entry.At:MM-dd HH:mm:ss}  {mark}{ScreenEventWords.Line(entry.What)}"), isVoid ? Ink.Quiet : Ink.Plain);
            ListWindow.Mark(sheet, list, row, first + row == chosen);
        }

        Area below = body.Rows(body.Height - 3);
        JobEntry shown = job.Entries[count - 1 - chosen];
        sheet.Rule(below, 0);
        string text = ScreenEventWords.Line(shown.What);
        sheet.PutParagraph(below, 1, job.Voided.TryGetValue(shown.Number, out VoidedEntry? voided) ? $"{ScreenRecordWords.VoidBy(voided)} | {text}" : text, indent: 1);
    }

    private static void Checks(Sheet sheet, Area body, BenchState state, CheckProgress checks)
    {
        sheet.Rule(body, 0, ScreenRecordWords.Progress(checks));
        if (checks.Lines.Count == 0)
        {
            sheet.Put(body, 2, 2, ScreenRecordWords.NoChecks);
            return;
        }

        Area list = body.Rows(1);
        int chosen = Math.Min(state.Record.CheckRow, checks.Lines.Count - 1);
        int first = ListWindow.First(chosen, checks.Lines.Count, list.Height);
        foreach ((int row, CheckLine line) in checks.Lines.Skip(first).Take(list.Height).Index())
        {
            sheet.Put(list, 2, row, ScreenRecordWords.Standing(line.Standing), StandingInk(line.Standing));
            sheet.Put(list, 11, row, $"{ScreenRecordWords.Check(line.Check)} {ScreenRecordWords.Expected(line.Expected)}");
            sheet.Put(list, 58, row, ScreenRecordWords.Reading(line.Last?.What.Reading));
            ListWindow.Mark(sheet, list, row, first + row == chosen);
        }
    }

    private static Ink StandingInk(CheckStanding standing) => standing switch
    {
        CheckStanding.Passed => Ink.Good,
        CheckStanding.Failed => Ink.Alarm,
        CheckStanding.Stale => Ink.Care,
        _ => Ink.Plain,
    };
}
