namespace ReworkThermal.App.Screens.Canvas;

/// <summary>Figures to be read at arm's length: five rows by five columns each, drawn here, enlarged by whole factors.</summary>
internal static class LargeDigits
{
    internal const int Rows = 5;

    private const int GlyphColumns = 5;
    private const int Gap = 1;
    private const int DotColumns = 2;

    // Each row is five bits, most significant bit on the left.
    private static readonly Dictionary<char, byte[]> _shapes = new()
    {
        ['0'] = [0b01110, 0b11011, 0b11011, 0b11011, 0b01110],
        ['1'] = [0b00110, 0b01110, 0b00110, 0b00110, 0b01111],
        ['2'] = [0b11110, 0b00011, 0b01110, 0b11000, 0b11111],
        ['3'] = [0b11110, 0b00011, 0b01110, 0b00011, 0b11110],
        ['4'] = [0b11011, 0b11011, 0b11111, 0b00011, 0b00011],
        ['5'] = [0b11111, 0b11000, 0b11110, 0b00011, 0b11110],
        ['6'] = [0b01111, 0b11000, 0b11110, 0b11011, 0b01110],
        ['7'] = [0b11111, 0b00011, 0b00110, 0b01100, 0b01100],
        ['8'] = [0b01110, 0b11011, 0b01110, 0b11011, 0b01110],
        ['9'] = [0b01110, 0b11011, 0b01111, 0b00011, 0b11110],
    };

    /// <summary>Columns that a figure takes.</summary>
    internal static int WidthOf(string figure, int scale) => figure.Sum(c => (c == '.' ? DotColumns : GlyphColumns) + Gap) * scale;

    /// <summary>Draws a figure of digits and points.</summary>
    internal static void Draw(Sheet sheet, Area area, int column, int row, string figure, int scale, Ink ink)
    {
        string block = new(sheet.Plain ? '#' : '█', scale);
        int at = column;
        foreach (char c in figure)
        {
            int columns = c == '.' ? DotColumns : GlyphColumns;
            for (int y = 0; y < Rows * scale; y++)
            {
                int bits = c == '.' ? (y / scale == Rows - 1 ? 0b11 : 0) : _shapes[c][y / scale];
                for (int x = 0; x < columns; x++)
                {
                    if ((bits >> (columns - 1 - x) & 1) == 1)
                    {
                        sheet.Put(area, at + (x * scale), row + y, block, ink);
                    }
                }
            }

            at += (columns + Gap) * scale;
        }
    }
}
