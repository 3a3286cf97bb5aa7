using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Reports;
using UnitsNet;

namespace ReworkThermal.App.Rendering;

/// <summary>How passes and refit look: the verdict, one row per number of passes, the final joint in full.</summary>
/// <param name="report">The answer.</param>
internal sealed class CleaningView(CleaningReport report) : IRenderedReport
{
    private static readonly Temperature _hundred = Temperature.FromDegreesCelsius(100);

    private string Verdict => CleaningWords.Verdict(report.Asked.Passes, report.Asked.IsClean, Share(report.Asked.LowMeltingShare));

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(CleaningWords.Title(report.Joint));
        page.Paragraph(CleaningWords.Plan(
            Numerals.Milligrams(report.Before.Amount),
            report.Before.Fractions.ToString(),
            Numerals.Milligrams(report.Added),
            report.Alloy,
            report.Refill));
        page.Paragraph(CleaningWords.Removed(
            report.Removal.Name,
            Numerals.Percent(report.Removal.Efficiency.Central.DecimalFractions),
            Numerals.Percent(report.Removal.Efficiency.Low.DecimalFractions),
            Numerals.Percent(report.Removal.Efficiency.High.DecimalFractions)));
        page.Paragraph(Verdict);
        page.Paragraph(CleaningWords.Enough(report.Enough, report.EnoughAtBest, report.EnoughAtWorst, report.ByPasses.Count));
        page.Blank();
        int shown = Math.Min(report.ByPasses.Count, Math.Max(report.Asked.Passes, report.Enough ?? 0) + 1);
        page.Table(CleaningWords.Columns, [.. report.ByPasses.Take(shown).Select(Row)]);
        if (report.Final is MeltReport.Computed melt)
        {
            page.Heading(MeltWords.Title(melt.Composition.ToString()));
            MeltView.WriteTables(page, melt);
        }

        page.List(CommonWords.Cautions, report.Cautions);
        page.List(CommonWords.Notes, [.. report.Notes.Concat(report.Final.Notes).Distinct()]);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("joint", report.Joint);
        MeltView.WriteFractions(json, "base_solder", report.Before.Fractions);
        json.Number("solder_mass_mg", report.Before.Amount.Milligrams, 3);
        json.Text("alloy", report.Alloy);
        json.Number("added_mass_mg", report.Added.Milligrams, 3);
        json.Text("flush", report.Flush);
        json.Text("refill", report.Refill);
        json.WriteNumber("passes", report.Asked.Passes);
        json.Number("removed_fraction", report.Asked.Removed.DecimalFractions, 4);
        json.Number("residue_fraction", report.ResidueFraction, 6);
        MeltView.WriteFractions(json, "final_mix", report.FinalMix);
        WriteJoint(json, report.Asked, "final_");
        json.Text("verdict", Verdict);
        json.WriteBoolean("clean", report.Asked.IsClean);
        Count(json, "passes_enough", report.Enough);
        Count(json, "passes_enough_at_best", report.EnoughAtBest);
        Count(json, "passes_enough_at_worst", report.EnoughAtWorst);
        json.WriteStartArray("by_passes");
        foreach (FinalJoint joint in report.ByPasses)
        {
            json.WriteStartObject();
            json.WriteNumber("passes", joint.Passes);
            WriteJoint(json, joint, string.Empty);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Number("uncertainty_k", report.Asked.Melting.Uncertainty.Kelvins, 1);
        json.Sentences("cautions", report.Cautions);
        json.Sentences("notes", [.. report.Notes.Concat(report.Final.Notes).Distinct()]);
        json.Sentences("sources", report.Sources);
    }

    private static void WriteJoint(Utf8JsonWriter json, FinalJoint joint, string prefix)
    {
        json.Number(prefix + "solidus_c", joint.Melting.Solidus.DegreesCelsius, 2);
        json.Number(prefix + "scheil_end_c", joint.Freezing.End.DegreesCelsius, 2);
        json.Number("liquid_fraction_at_100c", joint.Freezing.LiquidMassFractionAt(_hundred), 6);
        json.Number("liquid_fraction_at_140c", joint.LowMeltingShare.DecimalFractions, 6);
    }

    private static void Count(Utf8JsonWriter json, string name, int? count)
    {
        if (count is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static IReadOnlyList<string> Row(FinalJoint joint) =>
    [
        joint.Passes.ToString(CultureInfo.InvariantCulture),
        joint.Joint.Fractions.ToString(),
        Numerals.Fixed(joint.Melting.Solidus.DegreesCelsius, 0),
        Numerals.Fixed(joint.Freezing.End.DegreesCelsius, 0),
        Share(Ratio.FromDecimalFractions(joint.Freezing.LiquidMassFractionAt(_hundred))),
        Share(joint.LowMeltingShare),
        joint.IsClean ? "yes" : "no",
    ];

    private static string Share(Ratio share) => Numerals.Fixed(share.Percent, share.Percent < 1 ? 3 : 1) + " %";
}
