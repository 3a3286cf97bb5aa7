using ReworkThermal.App.Screens.Canvas;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>Rows of a list that fit, with the chosen one among them, marked by an arrow so that no colour is needed.</summary>
internal static class ListWindow
{
    /// <summary>First row to show.</summary>
    internal static int First(int row, int count, int room) => Math.Clamp(row - (room / 2), 0, Math.Max(0, count - room));

    /// <summary>Draws the mark before a row, and the cursor when it is the chosen one.</summary>
    internal static void Mark(Sheet sheet, Area area, int row, bool chosen)
    {
        if (chosen)
        {
            sheet.Put(area, 0, row, ">", Ink.Strong);
            sheet.Tint(area, row, Ink.Chosen);
            sheet.PlaceCursor(area, 0, row);
        }
    }
}
