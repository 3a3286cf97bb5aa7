using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>Draws a state. Pure: same state and size, same picture.</summary>
internal static class BenchDrawing
{
    private const int LeastWidth = 60;
    private const int LeastHeight = 16;

    /// <summary>Draws a state.</summary>
    /// <param name="state">What to show.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="plain">Whether only ASCII characters may be used for drawing, and large figures are written small.</param>
    internal static Picture Draw(BenchState state, int width, int height, bool plain)
    {
        Sheet sheet = new(Math.Max(1, width), Math.Max(1, height), plain);
        if (width < LeastWidth || height < LeastHeight)
        {
            sheet.PutParagraph(sheet.All, 0, ScreenWords.TooSmall, Ink.Strong);
            return sheet.Finish();
        }

        Area all = sheet.All;
        Area body = all.Rows(1, height - 4);
        PlaceLine(sheet, all, state);
        switch (state.Overlay)
        {
            case Overlay.Help:
                OverlayDrawing.Help(sheet, body, state);
                break;
            case Overlay.Cautions:
                OverlayDrawing.Cautions(sheet, body, state);
                break;
            default:
                Body(sheet, body, state);
                break;
        }

        FootDrawing.Draw(sheet, all, state);
        return sheet.Finish();
    }

    private static void PlaceLine(Sheet sheet, Area all, BenchState state)
    {
        int column = 0;
        foreach (Place place in Enum.GetValues<Place>())
        {
            string name = $"{(int)place} {ScreenWords.PlaceName(place)}";
            bool here = place == state.Place;
            column = sheet.Put(all, column, 0, here ? $"[{name}]" : $" {name} ", here ? Ink.Chosen : Ink.Plain) + 1;
        }

        if (state.Job is { } job)
        {
            sheet.PutEnding(all, all.Width, 0, Sheet.Cut(job.Brief.Label, all.Width - column - 1), Ink.Strong);
        }
    }

    private static void Body(Sheet sheet, Area body, BenchState state)
    {
        switch (state.Place)
        {
            case Place.Job when state.Job is null || state.Jobs.Shown:
                JobListDrawing.Draw(sheet, body, state);
                break;
            case Place.Job:
                JobDrawing.Draw(sheet, body, state, state.Job);
                break;
            case Place.Mix:
                MixDrawing.Draw(sheet, body, state);
                break;
            case Place.Plan:
                PlanDrawing.Draw(sheet, body, state);
                break;
            case Place.Clock:
                ClockDrawing.Draw(sheet, body, state);
                break;
            case Place.Record:
                RecordDrawing.Draw(sheet, body, state);
                break;
            default:
                throw new InvalidOperationException("unknown place");
        }
    }
}
