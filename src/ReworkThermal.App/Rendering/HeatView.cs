using System.Text.Json;
using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports;

namespace ReworkThermal.App.Rendering;

/// <summary>How a heat-flow run looks.</summary>
/// <param name="report">The answer.</param>
internal sealed class HeatView(HeatReport report) : IRenderedReport
{
    /// <summary>Most lines of the table for a reader; the full record is in the JSON and the CSV.</summary>
    private const int MostRows = 21;

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(report.Title);
        page.Paragraph(report.TimeToFlow is { } time ? HeatWords.Flowed(Numerals.Seconds(time)) : HeatWords.NeverFlowed(Numerals.Seconds(report.Times[^1])));
        page.Paragraph(HeatWords.Balance(Numerals.Percent(report.EnergyBalanceError)));
        page.Blank();
        page.Table(["", .. report.Probes.Select(p => ">" + HeatWords.Probe(p.Name))], [.. RowsShown().Select(Row)]);
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("title", report.Title);
        json.Number("time_to_flow_s", report.TimeToFlow?.Seconds, 3);
        json.Number("energy_balance_error", report.EnergyBalanceError, 8);
        json.Numbers("time_s", report.Times.Select(t => t.Seconds), 4);
        json.WriteStartObject("probes");
        foreach (ProbeTrace probe in report.Probes)
        {
            json.Numbers(probe.Name, probe.Temperatures.Select(t => t.DegreesCelsius), 3);
        }

        json.WriteEndObject();
        json.Sentences("notes", report.Notes);
        json.Sentences("sources", report.Sources);
    }

    /// <summary>The whole record as comma-separated values.</summary>
    /// <returns>A heading line with units, then one line per time.</returns>
    internal string ToCsv() => CsvText.Of(
        ["time_s", .. report.Probes.Select(p => p.Name + "_c")],
        Enumerable.Range(0, report.Times.Count).Select(i => (IReadOnlyList<string>)
        [
            CsvText.Number(report.Times[i].Seconds, 4),
            .. report.Probes.Select(p => CsvText.Number(p.Temperatures[i].DegreesCelsius, 3)),
        ]));

    /// <summary>The run as a chart: temperatures against time.</summary>
    /// <returns>The chart.</returns>
    internal Chart ToChart() => new(
        report.Title,
        HeatWords.TimeAxis,
        HeatWords.TemperatureAxis,
        [.. report.Probes.Select(p => new ChartLine(
            HeatWords.Probe(p.Name),
            [.. report.Times.Zip(p.Temperatures, (time, temperature) => new ChartPoint(time.Seconds, temperature.DegreesCelsius))]))],
        []);

    private IReadOnlyList<string> Row(int i) =>
    [
        Numerals.Seconds(report.Times[i]),
        .. report.Probes.Select(p => Numerals.Celsius(p.Temperatures[i])),
    ];

    // Evenly spread in time, ends included: the solver's own steps crowd together where things happen fast.
    private IEnumerable<int> RowsShown()
    {
        int previous = -1;
        double end = report.Times[^1].Seconds;
        for (int row = 0; row < MostRows; row++)
        {
            double wanted = end * row / (MostRows - 1);
            int next = Math.Max(previous + 1, 0);
            while (next < report.Times.Count - 1 && report.Times[next].Seconds < wanted)
            {
                next++;
            }

            if (next >= report.Times.Count)
            {
                yield break;
            }

            previous = next;
            yield return next;
        }
    }
}
