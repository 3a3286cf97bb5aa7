using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Reports.Checks;
using ReworkThermal.Core.Verification;

namespace ReworkThermal.App.Rendering;

/// <summary>How a verification looks: the worst of each area first.</summary>
/// <param name="report">The answer.</param>
/// <param name="all">Whether every figure is shown.</param>
internal sealed class VerificationView(VerificationReport report, bool all) : IRenderedReport
{
    private const int WorstShown = 5;

    private const int JsonDigits = 6;

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(VerificationWords.Title);
        page.Table(VerificationWords.SummaryColumns, [.. report.Areas.Select(SummaryCells)]);
        foreach (VerificationSummary area in report.Areas)
        {
            int outside = area.Binding.Count - area.Met;
            int shown = all ? area.Binding.Count : Math.Min(area.Binding.Count, Math.Max(WorstShown, outside));
            page.Heading(VerificationWords.AreaTitle(area.Area, shown, area.Binding.Count));
            page.Table(VerificationWords.FigureColumns, [.. area.Binding.Take(shown).Select(FigureCells)]);
        }

        if (all)
        {
            page.Heading(VerificationWords.Informative);
            page.Table(VerificationWords.FigureColumns, [.. report.Areas.SelectMany(a => a.Informative).Select(FigureCells)]);
        }

        page.Blank();
        page.Paragraph(VerificationWords.Total(report.Areas.Sum(a => a.Met), report.Areas.Sum(a => a.Binding.Count), report.Areas.Sum(a => a.Informative.Count)));
        page.Paragraph(VerificationWords.Explanation);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.WriteBoolean("all_met", report.AllMet);
        json.WriteStartArray("areas");
        foreach (VerificationSummary area in report.Areas)
        {
            json.WriteStartObject();
            json.Text("area", VerificationWords.AreaOf(area.Area));
            json.WriteNumber("figures", area.Binding.Count);
            json.WriteNumber("met", area.Met);
            json.WriteNumber("for_information", area.Informative.Count);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("figures");
        foreach (ComparedValue figure in report.Areas.SelectMany(a => a.Binding.Concat(a.Informative)))
        {
            Write(json, figure);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, ComparedValue figure)
    {
        json.WriteStartObject();
        json.Text("area", VerificationWords.AreaOf(figure.Published.Area));
        json.Text("table", figure.Published.Table);
        json.WriteNumber("line", figure.Published.Line);
        json.Text("what", figure.Published.Subject);
        json.Text("unit", figure.Published.Unit);
        json.WriteNumber("published", figure.Published.Value);
        json.Number("computed", figure.Computed, JsonDigits);
        json.Number("deviation", figure.Deviation, JsonDigits);
        json.WriteNumber("room_below", figure.Published.Below);
        json.WriteNumber("room_above", figure.Published.Above);
        json.Text("verdict", VerificationWords.AgreementOf(figure.Agreement));
        json.Text("mark", VerificationWords.MarkOf(figure.Published.Provenance.Mark));
        json.Text("source", figure.Published.Provenance.Source);
        json.Text("remark", figure.Published.Remark);
        json.WriteEndObject();
    }

    private static IReadOnlyList<string> SummaryCells(VerificationSummary area) =>
    [
        VerificationWords.AreaOf(area.Area),
        Numerals.Fixed(area.Binding.Count, 0),
        Numerals.Fixed(area.Met, 0),
        Numerals.Fixed(area.CountOf(EvidenceMark.Seen) + area.CountOf(EvidenceMark.SecondHand), 0),
        Numerals.Fixed(area.CountOf(EvidenceMark.Computed), 0),
        Numerals.Fixed(area.CountOf(EvidenceMark.Memory), 0),
        area.Binding.Count > 0 ? Numerals.Percent(area.Binding[0].RoomUsed) : VerificationWords.None,
    ];

    private static IReadOnlyList<string> FigureCells(ComparedValue figure) =>
    [
        VerificationNumbers.Published(figure),
        VerificationNumbers.Computed(figure),
        VerificationNumbers.Deviation(figure),
        figure.Binds ? Numerals.Percent(figure.RoomUsed) : VerificationWords.None,
        VerificationWords.Where(
            figure.Published.Subject, figure.Published.Remark, VerificationWords.MarkOf(figure.Published.Provenance.Mark), figure.Published.Provenance.Source),
    ];
}
