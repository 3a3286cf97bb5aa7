using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>Help and cautions, instead of the place.</summary>
internal static class OverlayDrawing
{
    internal static void Help(Sheet sheet, Area body, BenchState state)
    {
        sheet.Rule(body, 0, $"{ScreenHelpWords.Title}: {ScreenWords.PlaceName(state.Place)}");
        int row = 2;
        foreach (string line in ScreenHelpWords.Of(state.Place))
        {
            sheet.Put(body, 1, row++, line);
        }

        row++;
        foreach (string line in ScreenHelpWords.Everywhere)
        {
            sheet.Put(body, 1, row++, line, Ink.Quiet);
        }

        sheet.Put(body, 1, Math.Min(row + 1, body.Height - 1), ScreenWords.AnyKeyBack, Ink.Strong);
        sheet.PlaceCursor(body, 0, 0);
    }

    internal static void Cautions(Sheet sheet, Area body, BenchState state)
    {
        sheet.Rule(body, 0, ScreenHelpWords.CautionsTitle);
        Area text = body.Columns(1, Math.Min(body.Width - 2, 110));
        bool roomy = body.Height > 24;
        int row = roomy ? 2 : 1;
        foreach (string caution in ScreenHelpWords.Cautions)
        {
            sheet.Put(text, 0, row, "!", Ink.Care);
            row = sheet.PutParagraph(text, row, caution, indent: 2) + (roomy ? 1 : 0);
        }

        row = sheet.PutParagraph(text, row, ScreenHelpWords.CautionsSource, Ink.Quiet);
        bool must = state.Job is { CautionsShown: false, Status: JobStatus.Open };
        sheet.Put(text, 0, Math.Min(row, body.Height - 1), must ? ScreenHelpWords.CautionsRead : ScreenWords.AnyKeyBack, Ink.Strong);
        sheet.PlaceCursor(body, 0, 0);
    }
}
