using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.App.Rendering;

/// <summary>How a judged wire looks.</summary>
/// <param name="task">What it shall do.</param>
/// <param name="kind">What it is.</param>
/// <param name="report">Figures and verdict.</param>
internal sealed class WireView(WireTask task, WireKind kind, WireReport report) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(WireWords.Title(task.Gauge, Numerals.Millimetres(task.Length), kind.Name));
        page.Paragraph(WireWords.Verdict(report.Fitness));
        page.Blank();
        List<IReadOnlyList<string>> rows =
        [
            [WireWords.Resistance, Numerals.Fixed(report.ResistanceAt20C.Milliohms, 1) + " mohm"],
            [WireWords.VoltageDrop, Numerals.Fixed(report.VoltageDrop.Millivolts, 1) + " mV" + (report.DropShare is { } share ? WireWords.OfSupply(Numerals.Percent(share)) : string.Empty)],
            [WireWords.Heat, Numerals.Fixed((double)report.Power.Milliwatts, 1) + " mW"],
            [WireWords.Rise, Warming()],
            [WireWords.PreeceFusing, WireWords.Fusing(Numerals.Fixed(report.PreeceFusing.Amperes, 2))],
            [WireWords.OnderdonkFusing, WireWords.Fusing(Numerals.Fixed(report.OnderdonkFusing1s.Amperes, 2))],
        ];
        if (report.Inductance is { } inductance)
        {
            rows.Add([WireWords.Inductance, Numerals.Fixed(inductance.Nanohenries, 1) + " nH"]);
        }

        page.Table(["", ""], rows);
        page.List(CommonWords.Cautions, Cautions());
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("fitness", WireWords.Word(report.Fitness));
        json.Sentences("concerns", report.Fitness switch { WireFitness.Close close => close.Concerns.Select(WireWords.Of), WireFitness.Unfit unfit => unfit.Concerns.Select(WireWords.Of), _ => [] });
        json.Number("resistance_at_20c_ohm", report.ResistanceAt20C.Ohms, 6);
        json.Number("voltage_drop_v", report.VoltageDrop.Volts, 6);
        json.Number("drop_share_of_supply", report.DropShare, 6);
        json.Number("power_w", (double)report.Power.Watts, 6);
        json.Number("rise_low_k", report.Warming switch { WireWarming.Settles s => s.Low.Kelvins, WireWarming.Doubtful d => d.Low.Kelvins, _ => null }, 2);
        json.Number("rise_high_k", report.Warming is WireWarming.Settles settles ? settles.High.Kelvins : null, 2);
        json.Number("preece_fusing_a", report.PreeceFusing.Amperes, 4);
        json.Number("onderdonk_fusing_1s_a", report.OnderdonkFusing1s.Amperes, 4);
        json.Number("inductance_nh", report.Inductance?.Nanohenries, 3);
        json.WriteBoolean("strip_away_from_pad", report.StripAwayFromPad);
        json.Sentences("cautions", Cautions());
    }

    private string Warming() => report.Warming switch
    {
        WireWarming.Settles settles => WireWords.Settles(Numerals.Kelvin(settles.Low.Kelvins, 0), Numerals.Kelvin(settles.High.Kelvins, 0)),
        WireWarming.Doubtful doubtful => WireWords.Doubtful(Numerals.Kelvin(doubtful.Low.Kelvins, 0)),
        _ => WireWords.ItMelts,
    };

    private List<string> Cautions() =>
    [
        .. report.StripAwayFromPad ? (string[])[WireWords.StripAway] : [],
        .. WireWords.Cautions,
    ];
}
