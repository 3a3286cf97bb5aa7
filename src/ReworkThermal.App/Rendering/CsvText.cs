using System.Text;
using ReworkThermal.Data;

namespace ReworkThermal.App.Rendering;

/// <summary>Tables as comma-separated values, with a decimal point and line feeds; text that a spreadsheet would run is guarded.</summary>
internal static class CsvText
{
    /// <summary>Writes a table.</summary>
    /// <param name="columns">Column names, with units.</param>
    /// <param name="rows">Cells, made by <see cref="Number"/> or <see cref="Text"/>.</param>
    /// <returns>Text with a heading line.</returns>
    internal static string Of(IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        StringBuilder text = new();
        foreach (IReadOnlyList<string> row in rows.Prepend([.. columns.Select(Text)]))
        {
            text.Append(CsvCells.Join(row)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A number as a cell.</summary>
    /// <param name="value">The number.</param>
    /// <param name="digits">Digits after the point.</param>
    /// <returns>Invariant text.</returns>
    internal static string Number(double value, int digits) => Numerals.Fixed(value, digits);

    /// <summary>Text as a cell.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>One line, guarded where a spreadsheet would run it.</returns>
    internal static string Text(string text) => CsvCells.Guarded(SafeText.OneLine(text));
}
