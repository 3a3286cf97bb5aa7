using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Checks;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering;

/// <summary>How a check of the data looks.</summary>
/// <param name="report">The answer.</param>
internal sealed class DataCheckView(DataCheckReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(DataCheckWords.Title);
        page.Table(DataCheckWords.Columns, [.. report.Lines.Select(l => (IReadOnlyList<string>)[l.File, l.Subject, WordOf(l.Outcome), RemarkOf(l.Outcome)])]);
        page.Blank();
        page.Paragraph(DataCheckWords.Summary(report.Lines.Count, Count<CheckOutcome.Failed>(), Count<CheckOutcome.Broken>()));
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.WriteNumber("checks", report.Lines.Count);
        json.WriteNumber("failed", Count<CheckOutcome.Failed>());
        json.WriteNumber("broken", Count<CheckOutcome.Broken>());
        json.WriteBoolean("all_passed", report.AllPassed);
        json.WriteStartArray("lines");
        foreach (CheckLine line in report.Lines)
        {
            json.WriteStartObject();
            json.Text("file", line.File);
            json.Text("subject", line.Subject);
            json.Text("outcome", WordOf(line.Outcome));
            json.Text("remark", RemarkOf(line.Outcome));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private int Count<T>()
        where T : CheckOutcome => report.Lines.Count(l => l.Outcome is T);

    private static string WordOf(CheckOutcome outcome) => outcome switch
    {
        CheckOutcome.Passed => DataCheckWords.Passed,
        CheckOutcome.Failed => DataCheckWords.Failed,
        _ => DataCheckWords.Broken,
    };

    private static string RemarkOf(CheckOutcome outcome) => outcome switch
    {
        CheckOutcome.Passed passed => passed.Remark,
        CheckOutcome.Failed failed => failed.Reason,
        CheckOutcome.Broken broken => broken.Reason,
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };
}
