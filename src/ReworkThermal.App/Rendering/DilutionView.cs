using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering;

/// <summary>How dilutions look: one alloy in one amount in full, several as a ranked table.</summary>
/// <param name="report">The answer.</param>
/// <param name="single">Whether one alloy was asked for, so that its mix is the answer itself and not one of a list.</param>
internal sealed class DilutionView(DilutionReport report, bool single) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(DilutionWords.Title(report.Joint));
        page.Paragraph(DilutionWords.InTheJoint(Numerals.Milligrams(report.SolderMass), report.BaseSolder.ToString()));
        if (report.Lines.Count > 0)
        {
            page.Blank();
            page.Table(DilutionWords.Columns, [.. report.Lines.Select(Row)]);
            if (single && report.Lines[0].Mix is MeltReport.Computed melt)
            {
                page.Heading(MeltWords.Title(melt.Composition.ToString()));
                MeltView.WriteTables(page, melt);
                page.List(MeltWords.UncertaintyHeading(Numerals.Kelvin(melt.Uncertainty.Kelvins)), melt.UncertaintyReasons);
            }
        }
        else
        {
            page.Paragraph(DilutionWords.NoneReaches);
        }

        page.List(CommonWords.Cautions, [.. report.Lines.SelectMany(l => l.Cautions).Distinct()]);
        if (report.Excluded.Count > 0)
        {
            page.Heading(DilutionWords.ExcludedHeading);
            page.Table(["", ""], [.. report.Excluded.Select(r => (IReadOnlyList<string>)[r.Subject, r.Reason])]);
        }

        page.List(CommonWords.Notes, [.. report.Notes.Concat(report.Lines.SelectMany(l => l.Mix.Notes)).Distinct()]);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("joint", report.Joint);
        MeltView.WriteFractions(json, "base_solder", report.BaseSolder);
        json.Number("solder_mass_mg", report.SolderMass.Milligrams, 3);
        if (single)
        {
            WriteMembers(json, report.Lines[0], [.. report.Notes, .. report.Lines[0].Mix.Notes], report.Sources);
            return;
        }

        json.WriteStartArray("dilutions");
        foreach (DilutionLine line in report.Lines)
        {
            json.WriteStartObject();
            WriteMembers(json, line, line.Mix.Notes, line.Mix.Sources);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        PlanView.WriteRuledOut(json, "excluded", report.Excluded);
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    private static void WriteMembers(Utf8JsonWriter json, DilutionLine line, IReadOnlyList<string> notes, IReadOnlyList<string> sources)
    {
        json.Text("alloy", line.Alloy);
        json.Number("ratio", line.Ratio, 6);
        json.Number("added_mass_mg", line.AddedMass.Milligrams, 3);
        json.Number("wire_length_mm", line.WireLength?.Millimeters, 2);
        MeltView.WriteFractions(json, "mix", line.Mix.Composition);
        MeltView.WriteFigures(json, line.Mix);
        json.Sentences("cautions", line.Cautions);
        json.Sentences("notes", notes);
        json.Sentences("sources", sources);
    }

    private static IReadOnlyList<string> Row(DilutionLine line)
    {
        MeltReport.Computed? melt = line.Mix as MeltReport.Computed;
        return
        [
            line.Alloy,
            Numerals.Percent(line.Ratio),
            Numerals.Milligrams(line.AddedMass),
            line.WireLength is { } length ? Numerals.Millimetres(length) : DilutionWords.None,
            Shown(melt?.Flow.DegreesCelsius),
            Shown(melt?.Liquidus.DegreesCelsius),
            Shown(melt?.Solidus.DegreesCelsius),
            Shown(melt?.ScheilEnd?.DegreesCelsius),
            melt is null ? DilutionWords.None : "± " + Numerals.Fixed(melt.Uncertainty.Kelvins, 0),
        ];
    }

    private static string Shown(double? celsius) => celsius is { } value ? Numerals.Fixed(value, 0) : DilutionWords.None;
}
