using System.Text.Json;
using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Reports.Heating;
using ReworkThermal.Core.Reports.Plans;
using UnitsNet;

namespace ReworkThermal.App.Rendering;

/// <summary>How a heat-flow run looks.</summary>
/// <param name="report">The answer.</param>
internal sealed class HeatView(HeatReport report) : IRenderedReport
{
    /// <summary>Most lines of the table for a reader; the full record is in the JSON and the CSV.</summary>
    private const double LeastMeshError = 0.01;

    private const string FarEdge = "_far_edge";

    // A drawing of everything shows nothing; these are in the JSON and the CSV.
    private static readonly string[] _notDrawn = [ProbeNames.TipSensor, ProbeNames.KneeLaminate, ProbeNames.Plane(10), ProbeNames.Plane(20)];

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(report.Title);
        if (report.Solder is { } solder)
        {
            page.Paragraph(solder.TimeToFlow is { } time
                ? HeatWords.Flowed(Brief(time), Numerals.Celsius(solder.Flow))
                : HeatWords.NeverFlowed(Numerals.Celsius(solder.Flow), Numerals.Celsius(solder.ColdestPeak)));
            if (solder.Superheat.Kelvins > 0)
            {
                page.Paragraph(HeatWords.Superheated(Numerals.Kelvin(solder.Superheat.Kelvins, 0), solder.TimeToSuperheat is { } warmer ? Brief(warmer) : null));
            }
        }

        if (report.Solder is { FlowedFractions.Count: > 0 } trace)
        {
            string flowed = Numerals.Percent(trace.FlowedFractions.Max());
            page.Paragraph(trace.FrontFractions.Count > 0 ? HeatWords.Front(Numerals.Percent(trace.FrontFractions.Max()), flowed) : HeatWords.FlowedWithoutBarrel(flowed));
        }

        page.Paragraph(HeatWords.Balance(Numerals.Percent(report.EnergyBalanceError)));
        page.Paragraph(HeatWords.Mesh(report.Mesh.RadialCells, report.Mesh.AxialCells, report.Mesh.Steps, report.Mesh.Error is { } error ? MeshErrorText(error.Kelvins) : null));
        page.Blank();
        HeatTable.Write(page, report);

        WriteHeat(page);
        WriteNeighbours(page);
        page.List(CommonWords.Notes, report.Notes);
        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("title", report.Title);
        json.Number("time_to_flow_s", report.Solder?.TimeToFlow?.Seconds, 3);
        json.Number("time_to_superheat_s", report.Solder?.TimeToSuperheat?.Seconds, 3);
        json.Number("energy_balance_error", report.EnergyBalanceError, 8);
        json.WriteStartObject("mesh");
        json.Number("radial_cells", report.Mesh.RadialCells, 0);
        json.Number("axial_cells", report.Mesh.AxialCells, 0);
        json.Number("time_steps", report.Mesh.Steps, 0);
        json.Number("error_estimate_k", report.Mesh.Error?.Kelvins, 4);
        json.WriteEndObject();
        json.Number("flow_c", report.Solder?.Flow.DegreesCelsius, 2);
        json.Number("superheat_k", report.Solder?.Superheat.Kelvins, 2);
        json.Number("coldest_solder_peak_c", report.Solder?.ColdestPeak.DegreesCelsius, 2);
        json.Numbers("time_s", report.Times.Select(t => t.Seconds), 4);
        json.WriteStartObject("probes");
        foreach (ProbeTrace probe in report.Probes)
        {
            json.Numbers(SafeText.OneLine(probe.Name), probe.Temperatures.Select(t => t.DegreesCelsius), 3);
        }

        json.WriteEndObject();
        json.Numbers("liquid_fraction", report.Solder?.LiquidFractions ?? [], 5);
        json.Numbers("flowed_fraction", report.Solder?.FlowedFractions ?? [], 5);
        json.Numbers("melt_front_fraction", report.Solder?.FrontFractions ?? [], 5);
        json.WriteStartObject("heat_in_j");
        foreach (HeatShare share in report.HeatIn)
        {
            json.Number(SafeText.OneLine(share.Way), share.Heat.Joules, 4);
        }

        json.WriteEndObject();
        json.WriteStartArray("neighbours");
        foreach (NeighbourLine neighbour in report.Neighbours)
        {
            json.WriteStartObject();
            json.Text("name", neighbour.Name);
            json.Number("peak_c", neighbour.Peak.DegreesCelsius, 2);
            json.Sentences("warnings", neighbour.Warnings);
            json.WriteEndObject();
        }

        json.WriteEndArray();
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
        [.. report.Probes.Where(p => !_notDrawn.Contains(p.Name) && !p.Name.EndsWith(FarEdge, StringComparison.Ordinal)).Select(p => new ChartLine(
            HeatWords.Probe(p.Name),
            [.. report.Times.Zip(p.Temperatures, (time, temperature) => new ChartPoint(time.Seconds, temperature.DegreesCelsius))]))],
        [.. Levels()]);

    private static string Brief(Duration time) => Numerals.Fixed(time.Seconds, time.Seconds < 1 ? 2 : 1) + " s";

    private static string MeshErrorText(double kelvin) =>
        kelvin < LeastMeshError ? HeatWords.Under(Numerals.Kelvin(LeastMeshError, 2)) : HeatWords.About(Numerals.Kelvin(kelvin, kelvin < 1 ? 2 : 1));

    private IEnumerable<ChartLevel> Levels()
    {
        if (report.Solder is { } solder)
        {
            double needed = solder.Flow.DegreesCelsius + solder.Superheat.Kelvins;
            yield return new ChartLevel(HeatWords.FlowLevel(Numerals.Celsius(solder.Flow, 0)), solder.Flow.DegreesCelsius);
            yield return new ChartLevel(HeatWords.NeededLevel(Numerals.Fixed(needed, 0) + " °C"), needed);
        }

        foreach (NeighbourLine neighbour in report.Neighbours)
        {
            if (neighbour.Limit is { } limit)
            {
                yield return new ChartLevel(HeatWords.LimitLevel(neighbour.Name, Numerals.Celsius(limit, 0)), limit.DegreesCelsius);
            }
        }
    }

    private void WriteHeat(Page page)
    {
        if (report.HeatIn.Count > 0)
        {
            page.Heading(HeatWords.HeatHeading);
            page.Table(["", ">"], [.. report.HeatIn.Select(h => (IReadOnlyList<string>)[HeatWords.Probe(h.Way), Numerals.Fixed(h.Heat.Joules, 2) + " J"])]);
        }
    }

    private void WriteNeighbours(Page page)
    {
        if (report.Neighbours.Count > 0)
        {
            page.Heading(HeatWords.NeighboursHeading);
            page.Table(["", ">", ""], [.. report.Neighbours.Select(n => (IReadOnlyList<string>)
            [
                n.Name,
                Numerals.Celsius(n.Peak, 0),
                n.Warnings.Count > 0 ? string.Join("; ", n.Warnings) : HeatWords.WithinLimits,
            ])]);
        }
    }
}
