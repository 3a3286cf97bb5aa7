using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>The joint at the end.</summary>
internal static class FinalSection
{
    private const double AroundK = 40;

    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record)
    {
        if (record.Final is not { } final)
        {
            return new RecordSection(RecordWords.FinalHeading, [new RecordBlock.Prose(RecordWords.FinalUnknown)]);
        }

        string range = Numerals.Kelvin(final.Curve.Uncertainty.Kelvins, 0);
        List<IReadOnlyList<string>> rows =
        [
            [RecordWords.FinalPad, final.Pad.Value],
            [RecordWords.FinalSolder, $"{Numerals.Milligrams(final.Solder.Amount)} {final.Solder.Fractions}"],
            [MeltWords.Solidus, PlanWords.WithUncertainty(Numerals.Celsius(final.Solidus, 0), range)],
            [MeltWords.Flow, PlanWords.WithUncertainty(Numerals.Celsius(final.Flow, 0), range)],
            [MeltWords.Liquidus, PlanWords.WithUncertainty(Numerals.Celsius(final.Liquidus, 0), range)],
        ];
        if (final is { ScheilEnd: { } end, LiquidAt100C: { } at100, LiquidAt140C: { } at140 })
        {
            rows.Add([MeltWords.ScheilEnd, PlanWords.WithUncertainty(Numerals.Celsius(end, 0), range)]);
            rows.Add([RecordWords.StillLiquid, RecordWords.At100And140(Numerals.Percent(at100), Numerals.Percent(at140))]);
        }

        List<RecordBlock> blocks = [new RecordBlock.Grid(["", ""], rows)];
        if (final.LiquidAt140C > CleaningQuestion.MostLowMelting.DecimalFractions)
        {
            blocks.Add(new RecordBlock.Warning(RecordWords.NotClean(Numerals.Percent(final.LiquidAt140C.Value))));
        }

        List<string> others = [.. record.Pads
            .Where(p => p.Steps.Count > 0 && p.Ledger.Pad != final.Pad)
            .Select(p => RecordWords.PadSolder(p.Ledger.Pad.Value, Numerals.Milligrams(p.Contents.Amount), p.Contents.Fractions.ToString()))];
        if (others.Count > 0)
        {
            blocks.Add(new RecordBlock.Items(others));
        }

        blocks.Add(new RecordBlock.Figure(
            SvgCanvas.Draw(new MeltCurveView(Near(final)).ToChart()),
            RecordWords.CurveAlt(final.Solder.Fractions.ToString(), Numerals.Celsius(final.Solidus, 0), Numerals.Celsius(final.Liquidus, 0))));
        return new RecordSection(RecordWords.FinalHeading, blocks);
    }

    // The curve where something happens: from below the solidus to above the liquidus.
    private static MeltCurveReport Near(FinalSolder final) => final.Curve with
    {
        Points =
        [
            .. final.Curve.Points.Where(p =>
                p.Temperature.DegreesCelsius >= final.Solidus.DegreesCelsius - AroundK && p.Temperature.DegreesCelsius <= final.Liquidus.DegreesCelsius + AroundK),
        ],
    };
}
