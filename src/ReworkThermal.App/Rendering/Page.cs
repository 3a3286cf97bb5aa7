using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Rendering;

/// <summary>
/// Writes text for a reader: headings, paragraphs wrapped to the width, and tables in columns. Everything written passes
/// <see cref="SafeText"/>. Weight is used for headings only, and never carries meaning on its own.
/// </summary>
/// <param name="output">Where to write.</param>
/// <param name="width">Columns available.</param>
/// <param name="useColour">Whether terminal sequences may be written.</param>
internal sealed class Page(TextWriter output, int width, bool useColour)
{
    private const string Bold = "\u001b[1m";

    private const string Plain = "\u001b[0m";

    private const int MostCitations = 10;

    private const int LeastLastColumn = 30;

    private const string Gap = "  ";

    private bool _started;

    /// <summary>Columns available.</summary>
    internal int Width => width;

    /// <summary>A heading, with an empty line before it unless it is the first thing on the page.</summary>
    /// <param name="text">The heading.</param>
    internal void Heading(string text)
    {
        Blank();
        string safe = SafeText.OneLine(text);
        Write(useColour ? Bold + safe + Plain : safe);
    }

    /// <summary>One empty line, unless nothing has been written yet.</summary>
    internal void Blank()
    {
        if (_started)
        {
            Write(string.Empty);
        }
    }

    /// <summary>One line as it is, not wrapped.</summary>
    /// <param name="text">The line.</param>
    internal void Verbatim(string text) => Write(SafeText.OneLine(text));

    /// <summary>A paragraph, wrapped between words.</summary>
    /// <param name="text">The text.</param>
    /// <param name="indent">Columns left empty at the left.</param>
    /// <param name="lead">Mark before the first line, for example "- "; later lines are indented by its length.</param>
    internal void Paragraph(string text, int indent = 0, string lead = "")
    {
        string margin = new(' ', indent);
        string hanging = new(' ', lead.Length);
        bool first = true;
        foreach (string line in Wrapped(SafeText.OneLine(text), width - indent - lead.Length))
        {
            Write(margin + (first ? lead : hanging) + line);
            first = false;
        }
    }

    /// <summary>A list of sentences under a heading; nothing at all when there are none.</summary>
    /// <param name="heading">The heading.</param>
    /// <param name="sentences">The sentences.</param>
    internal void List(string heading, IReadOnlyList<string> sentences)
    {
        if (sentences.Count == 0)
        {
            return;
        }

        Heading(heading);
        foreach (string sentence in sentences)
        {
            Paragraph(sentence, lead: "- ");
        }
    }

    /// <summary>Citations; a list too long for a bench is only counted.</summary>
    /// <param name="citations">The citations.</param>
    internal void Sources(IReadOnlyList<string> citations)
    {
        if (citations.Count <= MostCitations)
        {
            List(CommonWords.Sources, citations);
            return;
        }

        Heading(CommonWords.Sources);
        Paragraph(CommonWords.ManySources(citations.Count));
    }

    /// <summary>A table. The last column takes what width is left and is wrapped; columns of numbers are set to the right.</summary>
    /// <param name="columns">Column headings; one that starts with '>' is set to the right. All empty: no heading line.</param>
    /// <param name="rows">Cells, as many per row as there are columns.</param>
    internal void Table(IReadOnlyList<string> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        int last = columns.Count - 1;
        bool[] right = [.. columns.Select(c => c.StartsWith('>'))];
        string[] heads = [.. columns.Select(c => c.TrimStart('>'))];
        string[][] cells = [.. rows.Select(r => r.Select(SafeText.OneLine).ToArray())];
        int[] widths = [.. Enumerable.Range(0, columns.Count).Select(i => Math.Max(heads[i].Length, cells.Select(r => r[i].Length).DefaultIfEmpty(0).Max()))];
        int room = width - widths.Take(last).Sum(w => w + Gap.Length);
        widths[last] = Math.Max(Math.Min(widths[last], room), Math.Min(widths[last], LeastLastColumn));
        if (heads.Any(h => h.Length > 0))
        {
            Row(heads, widths, right);
            Row([.. widths.Select(w => new string('-', w))], widths, right);
        }

        foreach (string[] row in cells)
        {
            Row(row, widths, right);
        }
    }

    private void Row(string[] cells, int[] widths, bool[] right)
    {
        int last = cells.Length - 1;
        string head = string.Concat(Enumerable.Range(0, last).Select(i => (right[i] ? cells[i].PadLeft(widths[i]) : cells[i].PadRight(widths[i])) + Gap));
        foreach (string line in Wrapped(cells[last], widths[last]))
        {
            Write((head + (right[last] ? line.PadLeft(widths[last]) : line)).TrimEnd());
            head = new string(' ', head.Length);
        }
    }

    private void Write(string line)
    {
        output.Write(line);
        output.Write('\n');
        _started = true;
    }

    private static IEnumerable<string> Wrapped(string text, int columns)
    {
        string line = string.Empty;
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > columns)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length > 0 ? line + " " + word : word;
            }
        }

        yield return line;
    }
}
