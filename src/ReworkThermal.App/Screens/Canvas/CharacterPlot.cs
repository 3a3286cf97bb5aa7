using System.Globalization;

namespace ReworkThermal.App.Screens.Canvas;

/// <summary>A line plot in characters with figures at both axes. Marks carry letters, so that nothing depends on colour.</summary>
/// <param name="sheet">Where to draw.</param>
/// <param name="area">The whole plot with its figures.</param>
/// <param name="across">Least and greatest value across.</param>
/// <param name="up">Least and greatest value upwards.</param>
internal sealed class CharacterPlot(Sheet sheet, Area area, (double Least, double Most) across, (double Least, double Most) up)
{
    private const int LeftMargin = 5;
    private const int BottomMargin = 2;

    private readonly Area _field = area.Columns(LeftMargin).Rows(0, Math.Max(1, area.Height - BottomMargin));

    /// <summary>Draws the axes with figures.</summary>
    internal CharacterPlot Axes(string acrossLabel, string upLabel)
    {
        for (int row = 0; row < _field.Height; row++)
        {
            sheet.Put(area, LeftMargin - 1, row, sheet.Plain ? "|" : "│", Ink.Quiet);
        }

        sheet.Put(area, LeftMargin - 1, _field.Height, (sheet.Plain ? "+" : "└") + new string(sheet.Plain ? '-' : '─', _field.Width), Ink.Quiet);
        int step = Math.Max(2, _field.Height / 4);
        for (int row = 0; row < _field.Height; row += step)
        {
            sheet.PutEnding(area, LeftMargin - 1, row, Figure(up.Most - ((up.Most - up.Least) * row / Math.Max(1, _field.Height - 1))), Ink.Quiet);
        }

        int marks = Math.Max(2, _field.Width / 12);
        for (int i = 0; i < marks; i++)
        {
            int column = (_field.Width - 1) * i / (marks - 1);
            string figure = Figure(across.Least + ((across.Most - across.Least) * i / (marks - 1)));
            int start = Math.Clamp(LeftMargin + column - (figure.Length / 2), 0, Math.Max(0, area.Width - figure.Length));
            sheet.Put(area, start, _field.Height + 1, figure, Ink.Quiet);
        }

        sheet.PutEnding(_field, _field.Width, _field.Height - 1, acrossLabel, Ink.Quiet);
        sheet.Put(_field, 0, 0, upLabel, Ink.Quiet);
        return this;
    }

    /// <summary>Draws a level with a word at its right end.</summary>
    internal CharacterPlot Level(double value, string word, Ink ink)
    {
        if (value < up.Least || value > up.Most)
        {
            return this;
        }

        int row = RowOf(value);
        sheet.Put(_field, 0, row, new string(sheet.Plain ? '-' : '╌', _field.Width), ink);
        sheet.PutEnding(_field, _field.Width, row, " " + word, ink);
        return this;
    }

    /// <summary>Draws an upright line with a word at its top.</summary>
    internal CharacterPlot Upright(double value, string word, Ink ink, int wordRow = 0)
    {
        if (value < across.Least || value > across.Most)
        {
            return this;
        }

        int column = ColumnOf(value);
        for (int row = 0; row < _field.Height; row++)
        {
            sheet.Put(_field, column, row, sheet.Plain ? ":" : "┊", ink);
        }

        int start = column + 1 + word.Length <= _field.Width ? column + 1 : column - word.Length;
        sheet.Put(_field, Math.Max(0, start), wordRow, word, ink);
        return this;
    }

    /// <summary>Draws a line through points that go from left to right.</summary>
    internal CharacterPlot Line(IReadOnlyList<(double Across, double Up)> points, char mark, Ink ink)
    {
        for (int column = 0; column < _field.Width && points.Count > 0; column++)
        {
            double value = across.Least + ((across.Most - across.Least) * column / Math.Max(1, _field.Width - 1));
            if (value < points[0].Across || value > points[^1].Across)
            {
                continue;
            }

            int right = 1;
            while (right < points.Count - 1 && points[right].Across < value)
            {
                right++;
            }

            (double x0, double y0) = points[Math.Min(right - 1, points.Count - 1)];
            (double x1, double y1) = points[Math.Min(right, points.Count - 1)];
            double share = x1 > x0 ? Math.Clamp((value - x0) / (x1 - x0), 0, 1) : 1;
            double level = y0 + ((y1 - y0) * share);
            if (level >= up.Least && level <= up.Most)
            {
                sheet.Put(_field, column, RowOf(level), mark.ToString(), ink);
            }
        }

        return this;
    }

    private static string Figure(double value) => value.ToString(Math.Abs(value) < 10 && value != Math.Floor(value) ? "0.#" : "0", CultureInfo.InvariantCulture);

    private int RowOf(double value) => (int)Math.Round((up.Most - value) / (up.Most - up.Least) * (_field.Height - 1));

    private int ColumnOf(double value) => (int)Math.Round((value - across.Least) / (across.Most - across.Least) * (_field.Width - 1));
}
