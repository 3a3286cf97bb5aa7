using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>Help and cautions, instead of the place.</summary>
internal static class OverlayDrawing
{
    private const int HelpIndent = 13;

    internal static void Help(Sheet sheet, Area body, BenchState state)
    {
        sheet.Rule(body, 0, $"{ScreenHelpWords.Title}: {ScreenWords.PlaceName(state.Place)}");
        Area text = body.Columns(HelpIndent + 1, Math.Min(body.Width - HelpIndent - 2, 90));
        int row = 1;
        foreach ((string keys, string meaning) in ScreenHelpWords.Of(state.Place).Append((string.Empty, string.Empty)).Concat(ScreenHelpWords.Everywhere))
        {
            sheet.Put(body, 1, row, keys, Ink.Heading);
            row = Math.Max(row + 1, sheet.PutParagraph(text, row, meaning));
        }

        sheet.Put(body, 1, Math.Min(row, body.Height - 1), ScreenWords.AnyKeyBack, Ink.Strong);
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
