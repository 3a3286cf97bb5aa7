using System.Text;

namespace ReworkThermal.Data;

/// <summary>
/// Rows and cells of comma-separated text as RFC 4180 describes it: cells in double quotes may hold commas, quotes and line breaks. Text
/// that a spreadsheet would run carries a guard, an apostrophe before it (OWASP, "CSV Injection"); numbers never do.
/// </summary>
public static class CsvCells
{
    private const char Guard = '\'';
    private const string Runs = "=+-@\t\r";

    /// <summary>Text as a cell, with a guard before what a spreadsheet would run, and before what would be taken for guarded.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The cell; <see cref="Unguarded"/> gives the text back.</returns>
    public static string Guarded(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length > 0 && (Runs.Contains(text[0], StringComparison.Ordinal) || IsGuarded(text)) ? Guard + text : text;
    }

    /// <summary>Takes the guard off a cell of text; an apostrophe before anything else belongs to the text.</summary>
    /// <param name="cell">The cell.</param>
    /// <returns>The text.</returns>
    public static string Unguarded(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return IsGuarded(cell) ? cell[1..] : cell;
    }

    private static bool IsGuarded(string cell) => cell.Length > 1 && cell[0] == Guard && (cell[1] == Guard || Runs.Contains(cell[1], StringComparison.Ordinal));

    /// <summary>Splits the text of a file that somebody else wrote into rows; a byte order mark is passed over.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Name for messages.</param>
    /// <returns>Each row with the line it begins on.</returns>
    /// <exception cref="DataFileException">The quotes are not in order.</exception>
    internal static List<(int Line, List<string> Cells)> Read(string text, string file)
    {
        try
        {
            return Split(text.TrimStart('\uFEFF'));
        }
        catch (FormatException problem)
        {
            throw new DataFileException([new DataFileProblem(file, 0, string.Empty, problem.Message)]);
        }
    }

    /// <summary>Splits text into rows.</summary>
    /// <param name="text">The text; lines end in LF or CRLF.</param>
    /// <returns>Each row with the line it begins on; empty lines are left out.</returns>
    /// <exception cref="FormatException">A quoted cell does not end, or text follows its closing quote.</exception>
    internal static List<(int Line, List<string> Cells)> Split(string text)
    {
        List<(int Line, List<string> Cells)> rows = [];
        int line = 1;
        int at = 0;
        while (at < text.Length)
        {
            int began = line;
            List<string> cells = [];
            bool more = true;
            while (more)
            {
                cells.Add(at < text.Length && text[at] == '"' ? Quoted(text, ref at, ref line) : Plain(text, ref at));
                more = at < text.Length && text[at] == ',';
                at += more ? 1 : 0;
            }

            if (at < text.Length && text[at] == '\r')
            {
                at++;
            }

            if (at < text.Length)
            {
                if (text[at] != '\n')
                {
                    throw new FormatException(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"line {line}: text follows the closing quote of a cell"));
                }

                at++;
                line++;
            }

            if (cells is not [{ Length: 0 }])
            {
                rows.Add((began, cells));
            }
        }

        return rows;
    }

    /// <summary>Writes one row, in quotes where needed.</summary>
    /// <param name="cells">The cells; text among them is guarded already.</param>
    /// <returns>The row without its end of line.</returns>
    public static string Join(IEnumerable<string> cells) => string.Join(',', cells.Select(c =>
        c.AsSpan().ContainsAny(",\"\r\n") ? '"' + c.Replace("\"", "\"\"", StringComparison.Ordinal) + '"' : c));

    private static string Plain(string text, ref int at)
    {
        int start = at;
        while (at < text.Length && text[at] is not (',' or '\n') && !(text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n'))
        {
            at++;
        }

        return text[start..at];
    }

    private static string Quoted(string text, ref int at, ref int line)
    {
        int began = line;
        StringBuilder cell = new();
        for (at++; at < text.Length; at++)
        {
            if (text[at] == '"')
            {
                at++;
                if (at >= text.Length || text[at] != '"')
                {
                    return cell.ToString();
                }
            }

            line += text[at] == '\n' ? 1 : 0;
            _ = cell.Append(text[at]);
        }

        throw new FormatException(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"line {began}: a cell in quotes does not end"));
    }
}
