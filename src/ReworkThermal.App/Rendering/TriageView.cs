using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Plans;
using UnitsNet;

namespace ReworkThermal.App.Rendering;

/// <summary>How a triage looks.</summary>
/// <param name="report">The forecast.</param>
internal sealed class TriageView(TriageReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(report.Title);
        page.Paragraph(TriageWords.Plan(report.PlanKind));
        page.Paragraph(TriageWords.Touches(report.Touches, report.Pads.Count));
        page.Paragraph(TriageWords.Time(Minutes(report.Likely), Minutes(report.Least), Minutes(report.Most)));
        page.Paragraph(TriageWords.Wires(report.WiresCertain, report.WiresPossible));
        page.Heading(TriageWords.BandsHeading);
        page.Table(TriageWords.BandColumns, [.. report.Bands.Select(b => (IReadOnlyList<string>)[b.Band, Whole(b.Central), Whole(b.AtWorst)])]);
        page.Heading(TriageWords.PadsHeading);
        page.Table(TriageWords.PadColumns, [.. report.Pads.Select(p => (IReadOnlyList<string>)
        [
            p.Pad,
            p.State,
            p.Prior,
            Whole(p.Touches),
            p.Before ?? TriageWords.Gone,
            p.After ?? TriageWords.Gone,
            p.AtWorst ?? TriageWords.Gone,
            p.Wire,
            p.Reason,
        ])]);
        page.List(CommonWords.Cautions, PlanWords.BenchCautions);
        page.List(CommonWords.Notes, report.Notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("title", report.Title);
        json.Text("plan_kind", report.PlanKind);
        json.WriteNumber("touches", report.Touches);
        json.Number("bench_time_least_min", report.Least.Minutes, 1);
        json.Number("bench_time_likely_min", report.Likely.Minutes, 1);
        json.Number("bench_time_most_min", report.Most.Minutes, 1);
        json.WriteNumber("wires_certain", report.WiresCertain);
        json.WriteNumber("wires_possible", report.WiresPossible);
        json.WriteStartArray("bands");
        foreach (BandCount band in report.Bands)
        {
            json.WriteStartObject();
            json.Text("band", band.Band);
            json.WriteNumber("pads_central", band.Central);
            json.WriteNumber("pads_at_worst", band.AtWorst);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("pads");
        foreach (PadOutlook pad in report.Pads)
        {
            json.WriteStartObject();
            json.Text("pad", pad.Pad);
            json.Text("state", pad.State);
            json.Text("earlier_heat", pad.Prior);
            json.WriteNumber("touches", pad.Touches);
            json.Text("band_before", pad.Before);
            json.Text("band_after", pad.After);
            json.Text("band_at_worst", pad.AtWorst);
            json.Text("wire", pad.Wire);
            json.Text("reason", pad.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Sentences("notes", report.Notes);
    }

    private static string Minutes(Duration time) => Numerals.Fixed(time.Minutes, 0) + " min";

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
}
