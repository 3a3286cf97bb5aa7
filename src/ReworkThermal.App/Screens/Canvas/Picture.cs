using System.Drawing;
using System.Text;

namespace ReworkThermal.App.Screens.Canvas;

/// <summary>A finished screen: cells by row and column, and where the terminal's cursor stands, which a screen reader follows.</summary>
internal sealed class Picture
{
    private readonly Cell[,] _cells;

    internal Picture(Cell[,] cells, Point? cursor)
    {
        _cells = cells;
        Cursor = cursor;
    }

    internal int Width => _cells.GetLength(1);

    internal int Height => _cells.GetLength(0);

    internal Point? Cursor { get; }

    internal Cell this[int row, int column] => _cells[row, column];

    /// <summary>First and last column in which a row differs from another picture of the same size.</summary>
    /// <returns>Null when the rows are equal.</returns>
    internal (int First, int Last)? Difference(Picture? other, int row)
    {
        if (other is null || other.Width != Width || other.Height != Height)
        {
            return (0, Width - 1);
        }

        int first = 0;
        while (first < Width && _cells[row, first] == other._cells[row, first])
        {
            first++;
        }

        if (first == Width)
        {
            return null;
        }

        int last = Width - 1;
        while (_cells[row, last] == other._cells[row, last])
        {
            last--;
        }

        return (first, last);
    }

    /// <summary>The text alone, one line per row, without trailing spaces.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        for (int row = 0; row < Height; row++)
        {
            StringBuilder line = new();
            for (int column = 0; column < Width; column++)
            {
                if (_cells[row, column].Glyph.Value != 0)
                {
                    line.Append(_cells[row, column].Glyph);
                }
            }

            text.Append(line.ToString().TrimEnd()).Append('\n');
        }

        return text.ToString();
    }
}
