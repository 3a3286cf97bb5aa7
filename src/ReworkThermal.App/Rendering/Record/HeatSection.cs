using System.Globalization;
using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>The heat every pad had, and the temperatures of the touches.</summary>
internal static class HeatSection
{
    private const int MostTraces = 7;

    /// <summary>How long the cooling after a touch is drawn [s].</summary>
    private const double CoolingShown = 4;

    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record)
    {
        if (record.NotJudged is { } reason)
        {
            return new RecordSection(RecordWords.HeatHeading, [new RecordBlock.Warning(RecordWords.NotJudged(reason))]);
        }

        List<RecordBlock> blocks = [new RecordBlock.Prose(BudgetWords.Meaning)];
        if (record.Pads.Count > 0)
        {
            PadAccount worst = record.Pads.MaxBy(p => p.Budget.Share.Central)!;
            blocks.Add(new RecordBlock.Figure(
                BudgetChart.Draw(record.Pads),
                RecordWords.BudgetAlt(record.Pads.Count, worst.Ledger.Pad.Value, Numerals.Percent(worst.Budget.Share.Central), worst.Budget.Band.Word())));
            blocks.AddRange(Worked(record.Pads));
        }

        foreach (PadAccount pad in record.Pads.Where(p => p.NotCounted > 0))
        {
            blocks.Add(new RecordBlock.Warning(BudgetWords.OfPad(pad.Ledger.Pad, BudgetWords.Missing(pad.NotCounted) + ".")));
        }

        List<(PadAccount Pad, PadStep Step)> traced = Traced(record.Pads);
        if (traced.Count > 0)
        {
            blocks.Add(new RecordBlock.Figure(SvgCanvas.Draw(Traces(traced)), RecordWords.TracesAlt(traced.Count, Numerals.Fixed(traced.Max(t => t.Step.Interface!.PeakCelsius), 0))));
        }

        return new RecordSection(RecordWords.HeatHeading, blocks);
    }

    private static IEnumerable<RecordBlock> Worked(IReadOnlyList<PadAccount> pads)
    {
        List<PadAccount> worked = [.. pads.Where(p => p.Steps.Count > 0)];
        if (worked.Count > 0)
        {
            yield return new RecordBlock.Grid(RecordWords.PadColumns, [.. worked.Select(Row)]);
        }

        if (worked.Count < pads.Count)
        {
            yield return new RecordBlock.Prose(RecordWords.NotTouched(pads.Count - worked.Count));
        }
    }

    private static IReadOnlyList<string> Row(PadAccount pad) =>
    [
        pad.Ledger.Pad.Value + (BudgetView.NameOf(pad) is { } name ? $" ({name})" : string.Empty),
        pad.Steps.Count.ToString(CultureInfo.InvariantCulture),
        Numerals.Fixed(pad.Damage.Melts.Central, 0),
        pad.Damage.PeakCelsius is { } peak ? Numerals.Fixed(peak, 0) : JobWords.Unknown,
        PlanWords.Range(Numerals.Percent(pad.Budget.Share.Central), Numerals.Percent(pad.Budget.Share.Low), Numerals.Percent(pad.Budget.Share.High)),
        pad.Budget.Band.Word(),
        $"{pad.Budget.Governing.Kind.Word()} ({pad.Budget.Governing.Support.Word()})",
        BudgetWords.Prior(pad.Prior.Name, pad.PriorIsAssumed),
    ];

    // The hottest touches, in the order they were made.
    private static List<(PadAccount Pad, PadStep Step)> Traced(IReadOnlyList<PadAccount> pads) =>
    [
        .. pads.SelectMany(p => p.Steps.Where(s => s.Interface is { } h && h.Seconds.Length > 1).Select(s => (Pad: p, Step: s)))
            .OrderByDescending(t => t.Step.Interface!.PeakCelsius)
            .ThenBy(t => t.Step.Heat.Number)
            .Take(MostTraces)
            .OrderBy(t => t.Step.Heat.Number)
            .ThenBy(t => t.Pad.Ledger.Pad),
    ];

    private static Chart Traces(List<(PadAccount Pad, PadStep Step)> traced) => new(
        RecordWords.TracesTitle,
        HeatWords.TimeAxis,
        RecordWords.InterfaceAxis,
        [.. traced.Select(t => new ChartLine(
            RecordWords.TraceName(t.Step.Heat.Number, t.Pad.Ledger.Pad.Value),
            Points(t.Step.Interface!, t.Step.Heat.Touch.Dwell.Seconds + CoolingShown)))],
        []);

    private static List<ChartPoint> Points(TemperatureHistory history, double until) =>
    [
        .. Enumerable.Range(0, history.Seconds.Length)
            .Where(i => i == 0 || history.Seconds[i] <= until)
            .Select(i => new ChartPoint(history.Seconds[i], history.Celsius[i])),
    ];
}
