using System.Globalization;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Verification;

/// <summary>A line of a shipped reference table.</summary>
/// <param name="table">Name of the table.</param>
/// <param name="line">Line in it.</param>
/// <param name="cells">The cells by column.</param>
public sealed class ReferenceRow(string table, int line, IReadOnlyDictionary<string, string> cells)
{
    /// <summary>Name of the table.</summary>
    public string Table => table;

    /// <summary>Line in the table, from 1.</summary>
    public int Line => line;

    /// <summary>Source of the row, from its columns <c>source</c> and <c>mark</c>.</summary>
    /// <returns>The source and how it was met.</returns>
    /// <exception cref="FormatException">The mark is unknown.</exception>
    public Provenance Origin() => new(this["source"], Vocabulary.Of<EvidenceMark>().TryGetValue(this["mark"], out EvidenceMark mark) && mark != EvidenceMark.Judgement ? mark : throw Fault("mark"));

    /// <summary>Text of a column.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>The cell; may be empty.</returns>
    /// <exception cref="KeyNotFoundException">The table has no such column.</exception>
    public string this[string column] => cells.TryGetValue(column, out string? text) ? text : throw new KeyNotFoundException($"{table} has no column '{column}'");

    /// <summary>Number in a column.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>The number, in the unit that the column's name states.</returns>
    /// <exception cref="FormatException">There is no number.</exception>
    public double Number(string column) => NumberOrNull(column) ?? throw Fault(column);

    /// <summary>Number in a column that may be empty.</summary>
    /// <param name="column">Name of the column.</param>
    /// <returns>The number, or null when the cell is empty.</returns>
    /// <exception cref="FormatException">There is something else than a number.</exception>
    public double? NumberOrNull(string column)
    {
        string text = this[column];
        return text.Length == 0 ? null
            : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) ? number
            : throw Fault(column);
    }

    private FormatException Fault(string column) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{table}, line {line}: column '{column}' cannot be read"));
}
