using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Plans;

namespace ReworkThermal.App.Rendering;

/// <summary>How a calibration looks.</summary>
/// <param name="report">The calibration.</param>
internal sealed class CalibrationView(CalibrationReport report) : IRenderedReport
{
    private const int Digits = 4;

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(CalibrationWords.Heading(report.Board));
        if (report.Reason is { } reason)
        {
            page.Paragraph(reason);
        }

        if (report.Touches.Count > 0)
        {
            page.Heading(CalibrationWords.TouchesHeading);
            page.Table(CalibrationWords.TouchColumns, [.. report.Touches.Select(Row)]);
        }

        if (report.Inputs.Count > 0)
        {
            page.Heading(CalibrationWords.LearnedHeading);
            page.Table(CalibrationWords.LearnedColumns, [.. report.Inputs.Select(Row)]);
            page.Paragraph(CalibrationWords.RangeNote);
            page.Paragraph(CalibrationWords.UsedFrom);
        }
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("board", report.Board);
        json.Text("reason", report.Reason);
        json.WriteStartArray("touches");
        foreach (ObservedLine touch in report.Touches)
        {
            json.WriteStartObject();
            json.WriteNumber("number", touch.Number);
            json.Text("setting", touch.Setting);
            json.Text("seen", touch.Seen);
            string unit = touch.Unit == "s" ? "s" : "c";
            json.Number("expected_before_" + unit, touch.Before, Digits);
            json.Number("expected_after_" + unit, touch.After, Digits);
            json.Number("misfit_standard_deviations", touch.Misfit, Digits);
            json.WriteBoolean("outlier", touch.IsOutlier);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("inputs");
        foreach (LearnedLine input in report.Inputs)
        {
            json.WriteStartObject();
            json.Text("input", input.Input);
            json.Text("unit", input.Unit);
            json.Number("before", input.Before, Digits);
            json.Number("low_before", input.LowBefore, Digits);
            json.Number("high_before", input.HighBefore, Digits);
            json.Number("after", input.After, Digits);
            json.Number("low_after", input.LowAfter, Digits);
            json.Number("high_after", input.HighAfter, Digits);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IReadOnlyList<string> Row(ObservedLine touch) =>
    [
        touch.Number.ToString(CultureInfo.InvariantCulture),
        touch.Setting,
        touch.Seen,
        Figure(touch.Before, touch.Unit),
        Figure(touch.After, touch.Unit),
        touch.Misfit is { } misfit ? CalibrationWords.Deviations(Numerals.Fixed(misfit, 1)) : string.Empty,
        touch.IsOutlier ? CalibrationWords.Aside : string.Empty,
    ];

    private static IReadOnlyList<string> Row(LearnedLine input) =>
    [
        input.Input,
        Short(input.Before, input.Unit),
        CalibrationWords.FromTo(Short(input.LowBefore, string.Empty), Short(input.HighBefore, string.Empty)),
        Short(input.After, input.Unit),
        CalibrationWords.FromTo(Short(input.LowAfter, string.Empty), Short(input.HighAfter, string.Empty)),
    ];

    private static string Figure(double? value, string unit) => value is { } known ? $"{Numerals.Fixed(known, 1)} {unit}" : string.Empty;

    private static string Short(double value, string unit)
    {
        string figure = Numerals.Fixed(value, Math.Abs(value) >= 20 ? 0 : Math.Abs(value) >= 2 ? 1 : 2);
        return unit.Length > 0 ? $"{figure} {unit}" : figure;
    }
}
