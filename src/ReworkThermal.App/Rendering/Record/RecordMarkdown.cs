using System.Text;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>Writes a record as Markdown (CommonMark, with pipe tables); pictures appear as their descriptions.</summary>
internal static class RecordMarkdown
{
    private const string Special = "\\`*_[]#|~";

    // At the beginning of a line these start lists or headings, and so does a number with a point.
    private const string SpecialFirst = "-+=";

    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>Markdown; the same record gives the same text.</returns>
    internal static string Of(RecordReport record)
    {
        StringBuilder text = new();
        text.Append("# ").Append(Escaped(RecordWords.Title(record))).Append("\n\n").Append(Escaped(RecordWords.Subtitle(record))).Append("\n\n");
        foreach (RecordSection section in RecordSections.Of(record))
        {
            text.Append("## ").Append(Escaped(section.Heading)).Append("\n\n");
            foreach (RecordBlock block in section.Blocks)
            {
                Write(text, block);
            }
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void Write(StringBuilder text, RecordBlock block)
    {
        switch (block)
        {
            case RecordBlock.Prose prose:
                text.Append(Escaped(prose.Text)).Append("\n\n");
                break;
            case RecordBlock.SmallPrint small:
                text.Append(Escaped(small.Text)).Append("\n\n");
                break;
            case RecordBlock.Warning warning:
                text.Append("**").Append(Escaped(RecordWords.WarningMark)).Append("** ").Append(Escaped(warning.Text)).Append("\n\n");
                break;
            case RecordBlock.Items items:
                foreach (string sentence in items.Sentences)
                {
                    text.Append("- ").Append(Escaped(sentence)).Append('\n');
                }

                text.Append('\n');
                break;
            case RecordBlock.Grid grid:
                Row(text, grid.Columns.Select(c => Escaped(c.TrimStart('>'))));
                Row(text, grid.Columns.Select(c => c.StartsWith('>') ? "---:" : "---"));
                foreach (IReadOnlyList<string> row in grid.Rows)
                {
                    Row(text, row.Select(Escaped));
                }

                text.Append('\n');
                break;
            case RecordBlock.Figure figure:
                text.Append('*').Append(Escaped(RecordWords.FigureElsewhere(figure.Description))).Append("*\n\n");
                break;
            default:
                throw new InvalidOperationException("unknown kind of block");
        }
    }

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    // Whatever could mean something to a Markdown or HTML reader is taken by its letter.
    private static string Escaped(string text)
    {
        string safe = SafeText.OneLine(text);
        StringBuilder escaped = new(safe.Length + 16);
        for (int i = 0; i < safe.Length; i++)
        {
            char c = safe[i];
            escaped.Append(c switch
            {
                '<' => "&lt;",
                '>' => "&gt;",
                '&' => "&amp;",
                _ when Special.Contains(c, StringComparison.Ordinal) => "\\" + c,
                _ when i == 0 && SpecialFirst.Contains(c, StringComparison.Ordinal) => "\\" + c,
                _ when i > 0 && (c is '.' or ')') && safe.AsSpan(0, i).IndexOfAnyExceptInRange('0', '9') < 0 => "\\" + c,
                _ => c.ToString(),
            });
        }

        return escaped.ToString();
    }
}
