using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Reports.Solders;
using UnitsNet;

namespace ReworkThermal.App.Rendering;

/// <summary>How the melting behaviour of a solder looks.</summary>
/// <param name="report">The answer.</param>
internal sealed class MeltView(MeltReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(MeltWords.Title(report.Composition.ToString()));
        if (report is MeltReport.Computed computed)
        {
            WriteTables(page, computed);
            page.List(MeltWords.UncertaintyHeading(Numerals.Kelvin(computed.Uncertainty.Kelvins)), computed.UncertaintyReasons);
        }
        else if (report is MeltReport.SolidusOnly only)
        {
            page.Table(["", ">", ""], [[MeltWords.Solidus, WithRange(only.Solidus, Numerals.Fixed(only.Uncertainty.Kelvins, 0)), MeltWords.SolidusMeaning]]);
            page.Paragraph(only.Reason);
            page.List(MeltWords.UncertaintyHeading(Numerals.Kelvin(only.Uncertainty.Kelvins)), only.UncertaintyReasons);
        }
        else if (report is MeltReport.NotConverged failed)
        {
            page.Paragraph(MeltWords.NotConverged(failed.Reason));
        }

        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("composition", report.Composition.ToString());
        WriteFractions(json, "mass_fractions", report.Composition);
        WriteFigures(json, report);
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    /// <summary>Writes the figures of a melting report; also used where it is part of a larger answer.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="report">The answer.</param>
    internal static void WriteFigures(Utf8JsonWriter json, MeltReport report)
    {
        MeltReport.Computed? computed = report as MeltReport.Computed;
        MeltReport.SolidusOnly? only = report as MeltReport.SolidusOnly;
        json.Number("solidus_c", (computed?.Solidus ?? only?.Solidus)?.DegreesCelsius, 2);
        json.Number("liquidus_c", computed?.Liquidus.DegreesCelsius, 2);
        json.Number("flow_c", computed?.Flow.DegreesCelsius, 2);
        json.Number("scheil_end_c", computed?.ScheilEnd?.DegreesCelsius, 2);
        json.Number("liquid_fraction_at_100c", computed?.LiquidFractionAt100C, 6);
        json.Number("latent_heat_kj_per_kg", computed?.LatentHeat.KilojoulesPerKilogram, 2);
        json.Number("density_kg_per_m3", computed?.Density.KilogramsPerCubicMeter, 0);
        json.WriteStartArray("phases");
        foreach (PhaseLine phase in computed?.Phases ?? [])
        {
            json.WriteStartObject();
            json.Text("name", phase.Name);
            json.Text("words", phase.Words);
            json.Number("stable_from_c", phase.From.DegreesCelsius, 2);
            json.Number("stable_to_c", phase.To.DegreesCelsius, 2);
            json.Number("greatest_mass_fraction", phase.GreatestShare, 5);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Number("solidus_higher_by_up_to_k", computed?.SolidusRise.Kelvins, 2);
        json.Number("uncertainty_k", (computed?.Uncertainty ?? only?.Uncertainty)?.Kelvins, 2);
        json.Sentences("uncertainty_reasons", computed?.UncertaintyReasons ?? only?.UncertaintyReasons ?? []);
        json.WriteBoolean("converged", computed is not null || only is not null);
        if ((only?.Reason ?? (report as MeltReport.NotConverged)?.Reason) is { } reason)
        {
            json.Text("reason", reason);
        }
    }

    /// <summary>Writes a composition as an object of mass fractions.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name.</param>
    /// <param name="composition">The composition.</param>
    internal static void WriteFractions(Utf8JsonWriter json, string name, MassFractions composition)
    {
        json.WriteStartObject(name);
        foreach (Element element in composition.Present.OrderByDescending(e => composition[e]))
        {
            json.Number(element.Symbol(), composition[element], 6);
        }

        if (composition.Nickel > 0)
        {
            json.Number("Ni", composition.Nickel, 6);
        }

        if (composition.InertTrace > composition.Nickel)
        {
            json.Number("inert_trace", composition.InertTrace - composition.Nickel, 6);
        }

        json.WriteEndObject();
    }

    /// <summary>Writes the figures and phases as tables; also used where they are part of a larger answer.</summary>
    /// <param name="page">Where to write.</param>
    /// <param name="melt">The answer.</param>
    internal static void WriteTables(Page page, MeltReport.Computed melt)
    {
        WriteFigures(page, melt);
        WritePhases(page, melt);
    }

    private static void WriteFigures(Page page, MeltReport.Computed melt)
    {
        string range = Numerals.Fixed(melt.Uncertainty.Kelvins, 0);
        List<IReadOnlyList<string>> rows =
        [
            [MeltWords.Flow, WithRange(melt.Flow, range), MeltWords.FlowMeaning],
            [MeltWords.Liquidus, WithRange(melt.Liquidus, range), MeltWords.LiquidusMeaning],
            [MeltWords.Solidus, SolidusWithRange(melt, range), MeltWords.SolidusMeaning],
            [MeltWords.PastyRange, Numerals.Kelvin(melt.Liquidus.DegreesCelsius - melt.Solidus.DegreesCelsius), MeltWords.PastyRangeMeaning],
        ];
        if (melt.ScheilEnd is { } end)
        {
            rows.Add([MeltWords.ScheilEnd, WithRange(end, range), MeltWords.ScheilEndMeaning]);
        }

        if (melt.LiquidFractionAt100C is { } left)
        {
            rows.Add([MeltWords.LiquidAt100, Numerals.Percent(left), MeltWords.LiquidAt100Meaning]);
        }

        rows.Add([MeltWords.LatentHeat, Numerals.Fixed(melt.LatentHeat.KilojoulesPerKilogram, 1) + " kJ/kg", MeltWords.LatentHeatMeaning]);
        rows.Add([MeltWords.Density, Numerals.Fixed(melt.Density.KilogramsPerCubicMeter, 0) + " kg/m³", MeltWords.DensityMeaning]);
        page.Table(["", ">", ""], rows);
    }

    private static void WritePhases(Page page, MeltReport.Computed melt)
    {
        page.Heading(MeltWords.PhasesHeading);
        page.Table(MeltWords.PhaseColumns, [.. melt.Phases.Select(p => (IReadOnlyList<string>)
        [
            p.Name,
            Numerals.Fixed(p.From.DegreesCelsius, 1),
            Numerals.Fixed(p.To.DegreesCelsius, 1),
            Numerals.Percent(p.GreatestShare),
            p.Words,
        ])]);
    }

    private static string SolidusWithRange(MeltReport.Computed melt, string range) => melt.SolidusRise.Kelvins >= 1
        ? $"{Numerals.Celsius(melt.Solidus)} -{range}/+{Numerals.Fixed((melt.Uncertainty + melt.SolidusRise).Kelvins, 0)} K"
        : WithRange(melt.Solidus, range);

    private static string WithRange(Temperature temperature, string range) => $"{Numerals.Celsius(temperature)} ± {range} K";
}
