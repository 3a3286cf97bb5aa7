using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.App.Rendering;

/// <summary>How a judged differential pair looks.</summary>
/// <param name="task">The pair.</param>
/// <param name="kind">The wire.</param>
/// <param name="report">Figures and concerns.</param>
internal sealed class PairView(PairTask task, WireKind kind, PairReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(WireWords.PairTitle(Numerals.Fixed((double)task.BitRate.MegabitsPerSecond, 1), kind.Name));
        List<IReadOnlyList<string>> rows =
        [
            [WireWords.LegsDiffer, Numerals.Millimetres(report.Mismatch)],
            [WireWords.Skew, PlanWords.FromTo(Numerals.Fixed(report.SkewLow.Nanoseconds * 1000, 1), Numerals.Fixed(report.SkewHigh.Nanoseconds * 1000, 1)) + " ps"],
            [WireWords.BitTime, Numerals.Fixed(report.BitTime.Nanoseconds * 1000, 1) + " ps"],
            [WireWords.SkewShare, Numerals.Percent(report.SkewShareHigh)],
        ];
        if (report is { ImpedanceLow: { } low, ImpedanceHigh: { } high })
        {
            rows.Add([WireWords.PairImpedance, PlanWords.FromTo(Numerals.Fixed(low.Ohms, 0), Numerals.Fixed(high.Ohms, 0)) + " ohm"]);
        }

        page.Table(["", ""], rows);
        page.List(CommonWords.Cautions, [.. report.Concerns.Select(WireWords.Of), WireWords.PairCaution, .. WireWords.Cautions]);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Number("mismatch_mm", report.Mismatch.Millimeters, 4);
        json.Number("skew_low_ps", report.SkewLow.Nanoseconds * 1000, 3);
        json.Number("skew_high_ps", report.SkewHigh.Nanoseconds * 1000, 3);
        json.Number("bit_time_ps", report.BitTime.Nanoseconds * 1000, 3);
        json.Number("skew_share_of_bit_time", report.SkewShareHigh, 6);
        json.Number("impedance_low_ohm", report.ImpedanceLow?.Ohms, 2);
        json.Number("impedance_high_ohm", report.ImpedanceHigh?.Ohms, 2);
        json.Sentences("concerns", report.Concerns.Select(WireWords.Of));
        json.Sentences("cautions", [WireWords.PairCaution, .. WireWords.Cautions]);
    }
}
