using System.Net;
using System.Text;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>
/// Writes a record as one HTML file that needs nothing else: no script, no network, no fonts. Everything but the pictures, which are
/// made of escaped parts, passes <see cref="Escaped"/>.
/// </summary>
internal static class RecordHtml
{
    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>An HTML document; the same record gives the same text.</returns>
    internal static string Of(RecordReport record)
    {
        StringBuilder html = new();
        string title = Escaped(RecordWords.Title(record));
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append("<title>").Append(title).Append("</title>\n<style>\n").Append(RecordStyle.Sheet).Append("</style>\n</head>\n<body>\n<main>\n");
        html.Append("<h1>").Append(title).Append("</h1>\n<p>").Append(Escaped(RecordWords.Subtitle(record))).Append("</p>\n");
        foreach (RecordSection section in RecordSections.Of(record))
        {
            html.Append("<section>\n<h2>").Append(Escaped(section.Heading)).Append("</h2>\n");
            foreach (RecordBlock block in section.Blocks)
            {
                Write(html, block);
            }

            html.Append("</section>\n");
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static void Write(StringBuilder html, RecordBlock block)
    {
        switch (block)
        {
            case RecordBlock.Prose prose:
                html.Append("<p>").Append(Escaped(prose.Text)).Append("</p>\n");
                break;
            case RecordBlock.SmallPrint small:
                html.Append("<p class=\"small\">").Append(Escaped(small.Text)).Append("</p>\n");
                break;
            case RecordBlock.Warning warning:
                html.Append("<p class=\"warning\"><strong>").Append(Escaped(RecordWords.WarningMark)).Append("</strong> ").Append(Escaped(warning.Text)).Append("</p>\n");
                break;
            case RecordBlock.Items items:
                html.Append("<ul>\n");
                foreach (string sentence in items.Sentences)
                {
                    html.Append("<li>").Append(Escaped(sentence)).Append("</li>\n");
                }

                html.Append("</ul>\n");
                break;
            case RecordBlock.Grid grid:
                Write(html, grid);
                break;
            case RecordBlock.Figure figure:
                html.Append("<figure>\n<div class=\"plot\" role=\"img\" aria-label=\"").Append(Escaped(figure.Description)).Append("\">\n");
                html.Append(figure.Svg).Append("</div>\n<figcaption>").Append(Escaped(figure.Description)).Append("</figcaption>\n</figure>\n");
                break;
            default:
                throw new InvalidOperationException("unknown kind of block");
        }
    }

    private static void Write(StringBuilder html, RecordBlock.Grid grid)
    {
        bool[] right = [.. grid.Columns.Select(c => c.StartsWith('>'))];
        html.Append("<div class=\"wide\">\n<table>\n");
        bool hasHead = grid.Columns.Any(c => c.TrimStart('>').Length > 0);
        if (hasHead)
        {
            html.Append("<thead><tr>");
            for (int i = 0; i < grid.Columns.Count; i++)
            {
                html.Append("<th scope=\"col\"").Append(right[i] ? " class=\"figure\"" : string.Empty).Append('>').Append(Escaped(grid.Columns[i].TrimStart('>'))).Append("</th>");
            }

            html.Append("</tr></thead>\n");
        }

        html.Append("<tbody>\n");
        foreach (IReadOnlyList<string> row in grid.Rows)
        {
            html.Append("<tr>");
            for (int i = 0; i < row.Count; i++)
            {
                bool isName = !hasHead && i == 0;
                html.Append(isName ? "<th scope=\"row\"" : "<td").Append(right[i] ? " class=\"figure\"" : string.Empty).Append('>').Append(Escaped(row[i])).Append(isName ? "</th>" : "</td>");
            }

            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n</div>\n");
    }

    private static string Escaped(string text) => WebUtility.HtmlEncode(SafeText.OneLine(text));
}
