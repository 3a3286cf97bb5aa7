using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Heating;

namespace ReworkThermal.App.Rendering;

/// <summary>The part of a heat run that a reader can take in: as many probes as the width holds, and some twenty times.</summary>
internal static class HeatTable
{
    private const int MostRows = 21;

    private const int LeastColumn = 6;

    private const int Gap = 2;

    private const int TimeMargin = 2;

    /// <summary>Writes the table, and which probes it leaves out.</summary>
    /// <param name="page">Where to write.</param>
    /// <param name="report">The run.</param>
    internal static void Write(Page page, HeatReport report)
    {
        List<ProbeTrace> shown = ProbesThatFit(report, page.Width);
        page.Table([HeatWords.TimeColumn, .. shown.Select(p => ">" + HeatWords.Probe(p.Name))], [.. RowsShown(report).Select(i => Row(report, i, shown))]);
        if (shown.Count < report.Probes.Count)
        {
            page.Paragraph(HeatWords.MoreProbes([.. report.Probes.Skip(shown.Count).Select(p => HeatWords.Probe(p.Name))]));
        }
    }

    private static IReadOnlyList<string> Row(HeatReport report, int i, List<ProbeTrace> probes) =>
    [
        Numerals.Fixed(report.Times[i].Seconds, 1),
        .. probes.Select(p => Numerals.Fixed(p.Temperatures[i].DegreesCelsius, 1)),
    ];

    // As many columns as the width holds; the full record is in the JSON and the CSV.
    private static List<ProbeTrace> ProbesThatFit(HeatReport report, int width)
    {
        int room = width - HeatWords.TimeColumn.Length - TimeMargin;
        List<ProbeTrace> fitting = [];
        foreach (ProbeTrace probe in report.Probes)
        {
            room -= Math.Max(HeatWords.Probe(probe.Name).Length, LeastColumn) + Gap;
            if (room < 0 && fitting.Count > 0)
            {
                break;
            }

            fitting.Add(probe);
        }

        return fitting;
    }

    // Evenly spread in time, ends included: the solver's own steps crowd together where things happen fast.
    private static IEnumerable<int> RowsShown(HeatReport report)
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
