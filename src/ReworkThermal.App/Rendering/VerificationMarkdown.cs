using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Reports.Checks;
using ReworkThermal.Core.Verification;

namespace ReworkThermal.App.Rendering;

/// <summary>The summary of a verification as a Markdown table, as the guide shows it.</summary>
/// <param name="report">The answer.</param>
internal sealed class VerificationMarkdown(VerificationReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        foreach (string line in Lines())
        {
            page.Verbatim(line);
        }
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json) => new VerificationView(report, all: true).WriteJson(json);

    private IEnumerable<string> Lines()
    {
        yield return VerificationWords.MarkdownHead;
        yield return VerificationWords.MarkdownRule;
        foreach (VerificationSummary area in report.Areas)
        {
            ComparedValue worst = area.Binding[0];
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"| {VerificationWords.AreaOf(area.Area)} | {area.Met} of {area.Binding.Count} | {area.CountOf(EvidenceMark.Seen) + area.CountOf(EvidenceMark.SecondHand)} | {area.CountOf(EvidenceMark.Computed)} | {area.CountOf(EvidenceMark.Memory)} | {worst.Published.Subject}: {VerificationNumbers.Computed(worst)} against {VerificationNumbers.Published(worst)} ({worst.Published.Provenance.Source}) |");
        }
    }
}
