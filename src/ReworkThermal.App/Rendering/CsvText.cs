using System.Globalization;
using System.Text;

namespace ReworkThermal.App.Rendering;

/// <summary>Comma-separated values after RFC 4180, with a decimal point and line feeds.</summary>
internal static class CsvText
{
    /// <summary>Writes a table.</summary>
    /// <param name="columns">Column names, with units.</param>
    /// <param name="rows">Cells.</param>
    /// <returns>Text with a heading line.</returns>
    internal static string Of(IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        StringBuilder text = new();
        foreach (IReadOnlyList<string> row in rows.Prepend(columns))
        {
            text.AppendJoin(',', row.Select(Quoted)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A number as a cell.</summary>
    /// <param name="value">The number.</param>
    /// <param name="digits">Digits after the point.</param>
    /// <returns>Invariant text.</returns>
    internal static string Number(double value, int digits) => Numerals.Fixed(value, digits);

    private static string Quoted(string cell)
    {
        string safe = SafeText.OneLine(cell);
        return safe.AsSpan().ContainsAny(",\"") ? string.Create(CultureInfo.InvariantCulture, $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"") : safe;
    }
}
