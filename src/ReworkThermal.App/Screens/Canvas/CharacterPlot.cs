using System.Globalization;

namespace ReworkThermal.App.Screens.Canvas;

/// <summary>
/// A line plot in characters with round figures at both axes. Lines and levels carry letters and words, so that nothing depends on
/// colour; words are written last, over whatever is there.
/// </summary>
/// <param name="sheet">Where to draw.</param>
/// <param name="area">The whole plot with its figures.</param>
/// <param name="across">Least and greatest value across.</param>
/// <param name="up">Least and greatest value upwards.</param>
internal sealed class CharacterPlot(Sheet sheet, Area area, (double Least, double Most) across, (double Least, double Most) up)
{
    private const int LeftMargin = 5;
    private const int BottomMargin = 2;
    private const int RowsPerFigure = 3;
    private const int ColumnsPerFigure = 8;

    private readonly Area _field = area.Columns(LeftMargin).Rows(0, Math.Max(1, area.Height - BottomMargin));
    private readonly List<(int Column, int Row, string Text, Ink Ink)> _words = [];

    /// <summary>Draws the axes with figures.</summary>
    internal CharacterPlot Axes(string acrossLabel, string upLabel)
    {
        for (int row = 0; row < _field.Height; row++)
        {
            sheet.Put(area, LeftMargin - 1, row, sheet.Plain ? "|" : "│", Ink.Quiet);
        }

        sheet.Put(area, LeftMargin - 1, _field.Height, (sheet.Plain ? "+" : "└") + new string(sheet.Plain ? '-' : '─', _field.Width), Ink.Quiet);
        foreach (double value in RoundValues(up, _field.Height / RowsPerFigure))
        {
            sheet.PutEnding(area, LeftMargin - 1, RowOf(value), Figure(value), Ink.Quiet);
        }

        foreach (double value in RoundValues(across, _field.Width / ColumnsPerFigure))
        {
            string figure = Figure(value);
            int start = Math.Clamp(LeftMargin + ColumnOf(value) - (figure.Length / 2), 0, Math.Max(0, area.Width - figure.Length));
            sheet.Put(area, start, _field.Height + 1, figure, Ink.Quiet);
        }

        _words.Add((_field.Width - acrossLabel.Length, _field.Height - 1, acrossLabel, Ink.Quiet));
        _words.Add((0, 0, upLabel, Ink.Quiet));
        return this;
    }

    /// <summary>Draws a level with a word at its right end.</summary>
    internal CharacterPlot Level(double value, string word, Ink ink)
    {
        if (value >= up.Least && value <= up.Most)
        {
            sheet.Put(_field, 0, RowOf(value), new string(sheet.Plain ? '-' : '╌', _field.Width), ink);
            _words.Add((_field.Width - word.Length - 1, RowOf(value), " " + word, ink));
        }

        return this;
    }

    /// <summary>Draws an upright line with a word beside it.</summary>
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

        _words.Add((Math.Max(0, column + 1 + word.Length <= _field.Width ? column + 1 : column - word.Length), wordRow, word, ink));
        return this;
    }

    /// <summary>Draws a line through points that go from left to right.</summary>
    internal CharacterPlot Line(IReadOnlyList<(double Across, double Up)> points, char mark, Ink ink)
    {
        int right = 1;
        for (int column = 0; column < _field.Width && points.Count > 0; column++)
        {
            double value = across.Least + ((across.Most - across.Least) * column / Math.Max(1, _field.Width - 1));
            if (value < points[0].Across || value > points[^1].Across)
            {
                continue;
            }

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

    /// <summary>Writes the words.</summary>
    internal void Finish()
    {
        foreach ((int column, int row, string text, Ink ink) in _words)
        {
            sheet.Put(_field, Math.Max(0, column), row, text, ink);
        }
    }

    /// <summary>Round values within a range, about so many.</summary>
    private static IEnumerable<double> RoundValues((double Least, double Most) range, int about)
    {
        double wanted = (range.Most - range.Least) / Math.Max(1, about);
        double power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
        double step = power * (wanted / power <= 1 ? 1 : wanted / power <= 2 ? 2 : wanted / power <= 5 ? 5 : 10);
        for (double value = Math.Ceiling(range.Least / step) * step; value <= range.Most + (step * 1e-9); value += step)
        {
            yield return value;
        }
    }

    private static string Figure(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private int RowOf(double value) => (int)Math.Round((up.Most - value) / (up.Most - up.Least) * (_field.Height - 1));

    private int ColumnOf(double value) => (int)Math.Round((value - across.Least) / (across.Most - across.Least) * (_field.Width - 1));
}
