using System.Drawing;
using System.Text;
using ReworkThermal.App.Rendering;

namespace ReworkThermal.App.Screens.Canvas;

/// <summary>
/// Where a screen is drawn before anybody sees it. Text is made harmless, cut at the edge of its area, and never wraps by itself.
/// </summary>
/// <param name="width">Columns.</param>
/// <param name="height">Rows.</param>
/// <param name="plain">Whether only ASCII characters may be used for drawing.</param>
internal sealed class Sheet(int width, int height, bool plain)
{
    private const string Dots = "...";

    private readonly Cell[,] _cells = Blank(width, height);
    private Point? _cursor;

    internal Area All => new(0, 0, width, height);

    /// <summary>Whether only ASCII characters may be used for drawing.</summary>
    internal bool Plain => plain;

    /// <summary>Writes text.</summary>
    /// <returns>Column after the last character written.</returns>
    internal int Put(Area area, int column, int row, string text, Ink ink = Ink.Plain)
    {
        int x = area.Left + column;
        int y = area.Top + row;
        if (row < 0 || row >= area.Height || y < 0 || y >= height)
        {
            return column;
        }

        foreach (Rune rune in SafeText.OneLine(text).EnumerateRunes())
        {
            int cells = CellWidth.Of(rune);
            if (cells == 0)
            {
                continue;
            }

            if (x + cells > Math.Min(area.Right, width))
            {
                break;
            }

            if (x >= 0)
            {
                _cells[y, x] = new Cell(rune, ink);
                if (cells == 2)
                {
                    _cells[y, x + 1] = new Cell(default, ink);
                }
            }

            x += cells;
        }

        return x - area.Left;
    }

    /// <summary>Writes text; where it does not fit it ends in dots, so that nobody takes it for the whole.</summary>
    internal void PutCut(Area area, int column, int row, string text, Ink ink = Ink.Plain) =>
        Put(area, column, row, Cut(text, area.Width - column), ink);

    /// <summary>A text that fits: where it is longer it ends in dots, so that nobody takes it for the whole.</summary>
    /// <param name="text">The text.</param>
    /// <param name="room">Places it may take.</param>
    /// <returns>The text in one line, or its beginning.</returns>
    internal static string Cut(string text, int room)
    {
        string line = SafeText.OneLine(text);
        if (CellWidth.Of(line) <= room)
        {
            return line;
        }

        int used = 0;
        return string.Concat(line.EnumerateRunes().TakeWhile(r => (used += CellWidth.Of(r)) <= room - Dots.Length).Select(r => r.ToString())).TrimEnd() + Dots;
    }

    /// <summary>Writes text that ends before a column.</summary>
    internal void PutEnding(Area area, int columnAfter, int row, string text, Ink ink = Ink.Plain) =>
        Put(area, Math.Max(0, columnAfter - CellWidth.Of(text)), row, text, ink);

    /// <summary>Writes a paragraph broken at spaces.</summary>
    /// <returns>Row after the last one written.</returns>
    internal int PutParagraph(Area area, int row, string text, Ink ink = Ink.Plain, int indent = 0)
    {
        string line = string.Empty;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (CellWidth.Of(longer) > area.Width - indent && line.Length > 0)
            {
                Put(area, indent, row++, line, ink);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        if (line.Length > 0)
        {
            Put(area, indent, row++, line, ink);
        }

        return row;
    }

    /// <summary>Gives a whole row of an area another ink and keeps its text.</summary>
    internal void Tint(Area area, int row, Ink ink)
    {
        int y = area.Top + row;
        for (int x = area.Left; x < Math.Min(area.Right, width) && row < area.Height && y < height; x++)
        {
            _cells[y, x] = _cells[y, x] with { Ink = ink };
        }
    }

    /// <summary>Draws a horizontal rule.</summary>
    internal void Rule(Area area, int row, string title = "")
    {
        Put(area, 0, row, new string(plain ? '-' : '─', area.Width), Ink.Quiet);
        if (title.Length > 0)
        {
            Put(area, 1, row, $" {title} ", Ink.Heading);
        }
    }

    /// <summary>Wipes an area.</summary>
    internal void Clear(Area area)
    {
        for (int y = Math.Max(0, area.Top); y < Math.Min(area.Bottom, height); y++)
        {
            for (int x = Math.Max(0, area.Left); x < Math.Min(area.Right, width); x++)
            {
                _cells[y, x] = Cell.Blank;
            }
        }
    }

    /// <summary>Says where the terminal's cursor belongs; the last word counts.</summary>
    internal void PlaceCursor(Area area, int column, int row) => _cursor = new Point(
        Math.Clamp(area.Left + column, 0, width - 1),
        Math.Clamp(area.Top + row, 0, height - 1));

    /// <summary>The finished screen.</summary>
    internal Picture Finish() => new(_cells, _cursor);

    private static Cell[,] Blank(int width, int height)
    {
        Cell[,] cells = new Cell[height, width];
        for (int y = 0; y < height; y++)
        {
            for (int x = 0; x < width; x++)
            {
                cells[y, x] = Cell.Blank;
            }
        }

        return cells;
    }
}
