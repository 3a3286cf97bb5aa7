using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;

namespace ReworkThermal.App.Rendering;

/// <summary>How settings for the end of a wire look.</summary>
/// <param name="pad">The pad.</param>
/// <param name="touches">Settings that hold the limits, best first.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class WirePlanView(PadId pad, IReadOnlyList<WireTouch> touches, IReadOnlyList<string> notes) : IRenderedReport
{
    private const int MostShown = 6;

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(WireWords.PlanTitle(pad));
        if (touches.Count == 0)
        {
            page.Paragraph(WireWords.NoSetting);
        }
        else
        {
            page.Table(WireWords.PlanColumns, [.. touches.Take(MostShown).Select(Row)]);
            page.Paragraph(WireWords.TwoTouches);
        }

        page.List(CommonWords.Cautions, [.. touches.Take(1).SelectMany(t => t.Warnings), .. WireWords.Cautions]);
        page.List(CommonWords.Notes, notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("pad", pad.Value);
        json.WriteStartArray("touches");
        foreach (WireTouch touch in touches)
        {
            json.WriteStartObject();
            json.Text("tools", EventWords.Tools(touch.Tools));
            json.Number("time_to_flow_s", touch.TimeToFlow.Seconds, 3);
            json.Number("dwell_s", touch.Dwell.Seconds, 3);
            json.Number("pad_peak_c", touch.PadPeak.DegreesCelsius, 2);
            json.Spread("added_laminate_share", touch.Cost.AddedShareOf(GaugeKind.Laminate)!.Value);
            json.Spread("budget_share_after", touch.Cost.After.Share);
            json.Text("band_after", touch.Cost.After.Band.Word());
            json.Sentences("warnings", touch.Warnings);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("touches_per_wire", 2);
        json.Sentences("cautions", WireWords.Cautions);
        json.Sentences("notes", notes);
    }

    private static IReadOnlyList<string> Row(WireTouch touch) =>
    [
        EventWords.Tools(touch.Tools),
        Numerals.Seconds(touch.TimeToFlow),
        Numerals.Seconds(touch.Dwell),
        Numerals.Fixed(touch.PadPeak.DegreesCelsius, 0),
        Numerals.Percent(touch.Cost.AddedShareOf(GaugeKind.Laminate)!.Value.Central),
        Numerals.Percent(touch.Cost.After.Share.Central),
        touch.Cost.After.Band.Word(),
    ];
}
