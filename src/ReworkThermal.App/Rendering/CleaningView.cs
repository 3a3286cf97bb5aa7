using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering;

/// <summary>How cleaning passes look.</summary>
/// <param name="report">The answer.</param>
internal sealed class CleaningView(CleaningReport report) : IRenderedReport
{
    private CleaningLine Asked => report.ByPasses[report.Asked - 1];

    private string Verdict => CleaningWords.Verdict(
        report.Asked, Asked.Final.IsClean, report.Enough, report.EnoughAtBest, report.EnoughAtWorst, most: report.ByPasses.Count);

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(CleaningWords.Title(report.Joint, report.Alloy, report.Refill.ToString()));
        page.Paragraph(DilutionWords.InTheJoint(Numerals.Milligrams(report.SolderMass), report.Solder.ToString()));
        page.Paragraph(Verdict);
        page.Blank();
        page.Table(CleaningWords.Columns, [.. report.ByPasses.Take(Math.Max(report.Asked, report.Enough ?? 0)).Select(Row)]);
        page.Paragraph(CleaningWords.Uncertainty(Numerals.Kelvin(report.Uncertainty.Kelvins, 0)));
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("joint", report.Joint);
        json.WriteNumber("passes", report.Asked);
        WriteMembers(json, Asked);
        json.WriteBoolean("clean", Asked.Final.IsClean);
        json.Text("verdict", Verdict);
        json.Number("passes_enough", report.Enough, 0);
        json.Number("passes_enough_at_best", report.EnoughAtBest, 0);
        json.Number("passes_enough_at_worst", report.EnoughAtWorst, 0);
        json.Number("uncertainty_k", report.Uncertainty.Kelvins, 2);
        json.WriteStartArray("by_passes");
        foreach (CleaningLine line in report.ByPasses)
        {
            json.WriteStartObject();
            json.WriteNumber("passes", line.Passes);
            WriteMembers(json, line);
            json.WriteBoolean("clean", line.Final.IsClean);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    private static void WriteMembers(Utf8JsonWriter json, CleaningLine line)
    {
        json.Number("residue_fraction", line.ResidueFraction, 6);
        MeltView.WriteFractions(json, "final_mix", line.Final.Composition);
        json.Number("final_solidus_c", line.Final.Solidus.DegreesCelsius, 2);
        json.Number("final_scheil_end_c", line.Final.ScheilEnd.DegreesCelsius, 2);
        json.Number("liquid_fraction_at_100c", line.Final.LiquidFractionAt100C, 6);
        json.Number("liquid_fraction_at_140c", line.Final.LiquidFractionAt140C, 6);
    }

    private static IReadOnlyList<string> Row(CleaningLine line) =>
    [
        line.Passes.ToString(CultureInfo.InvariantCulture),
        Numerals.Percent(line.ResidueFraction),
        Numerals.Fixed(line.Final.Solidus.DegreesCelsius, 0),
        Numerals.Fixed(line.Final.ScheilEnd.DegreesCelsius, 0),
        Numerals.Percent(line.Final.LiquidFractionAt100C),
        Numerals.Percent(line.Final.LiquidFractionAt140C),
        line.Final.IsClean ? CleaningWords.Clean : CleaningWords.NotClean,
        line.Final.Composition.ToString(),
    ];
}
