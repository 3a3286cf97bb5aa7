using System.Text.Json;
using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering;

/// <summary>How a melt curve looks.</summary>
/// <param name="report">The answer.</param>
internal sealed class MeltCurveView(MeltCurveReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(MeltCurveWords.Title(report.Composition.ToString(), Numerals.Kelvin(report.Uncertainty.Kelvins)));
        page.Table(MeltCurveWords.Columns, [.. report.Points.Select(p => (IReadOnlyList<string>)
        [
            Numerals.Fixed(p.Temperature.DegreesCelsius, 1),
            Numerals.Fixed(p.LiquidFraction * 100, 2),
            Numerals.Fixed(p.Enthalpy.KilojoulesPerKilogram, 2),
            string.Join(" + ", p.Phases),
        ])]);
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("composition", report.Composition.ToString());
        MeltView.WriteFractions(json, "mass_fractions", report.Composition);
        json.Numbers("temperature_c", report.Points.Select(p => p.Temperature.DegreesCelsius), 2);
        json.Numbers("liquid_fraction", report.Points.Select(p => p.LiquidFraction), 6);
        json.Numbers("enthalpy_kj_per_kg", report.Points.Select(p => p.Enthalpy.KilojoulesPerKilogram), 3);
        json.WriteStartArray("phases");
        foreach (CurvePoint point in report.Points)
        {
            json.WriteStartArray();
            foreach (string phase in point.Phases)
            {
                json.WriteStringValue(SafeText.OneLine(phase));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.Number("uncertainty_k", report.Uncertainty.Kelvins, 2);
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    /// <summary>The curve as comma-separated values.</summary>
    /// <returns>A heading line with units, then one line per temperature.</returns>
    internal string ToCsv() => CsvText.Of(
        ["temperature_c", "liquid_fraction", "enthalpy_kj_per_kg", "phases"],
        report.Points.Select(p => (IReadOnlyList<string>)
        [
            CsvText.Number(p.Temperature.DegreesCelsius, 2),
            CsvText.Number(p.LiquidFraction, 6),
            CsvText.Number(p.Enthalpy.KilojoulesPerKilogram, 3),
            CsvText.Text(string.Join('+', p.Phases)),
        ]));

    /// <summary>The curve as a chart: liquid share against temperature.</summary>
    /// <returns>The chart.</returns>
    internal Chart ToChart() => new(
        MeltCurveWords.ChartTitle(report.Composition.ToString()),
        MeltCurveWords.TemperatureAxis,
        MeltCurveWords.LiquidAxis,
        [new ChartLine(MeltCurveWords.LiquidLine, [.. report.Points.Select(p => new ChartPoint(p.Temperature.DegreesCelsius, p.LiquidFraction * 100))])],
        []);
}
