using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Touches;

namespace ReworkThermal.App.Rendering;

/// <summary>What the next touch would do, as JSON.</summary>
internal static class ForecastJson
{
    /// <summary>Writes the field <c>next_touch</c>.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="outcome">The forecast; null when nothing was asked.</param>
    internal static void Write(Utf8JsonWriter json, ForecastOutcome? outcome)
    {
        if (outcome is not ForecastOutcome.Made { Forecast: { } next })
        {
            json.WriteNull("next_touch");
            json.Text("next_touch_reason", outcome is ForecastOutcome.Failed failed ? failed.Reason : BudgetWords.NoSettings);
            return;
        }

        json.WriteStartObject("next_touch");
        json.Text("tools", EventWords.Tools(next.Tools));
        json.Number("dwell_s", next.Dwell.Seconds, 3);
        json.Number("time_to_flow_s", next.Simulation.TimeToFlow?.Seconds, 3);
        json.Number("pad_peak_c", next.Simulation.Pad.PeakCelsius, 2);
        json.WriteBoolean("melts", next.Simulation.Melted);
        json.Spread("added_share", next.Cost.AddedShare);
        json.Spread("budget_share_after", next.Cost.After.Share);
        json.Text("band_after", next.Cost.After.Band.Word());
        json.Text("worst_band_after", next.Cost.After.WorstBand.Word());
        json.Number("safe_below_share", next.Limit.Share, 6);
        (double? longest, bool isWhole, string? reason) = next.Safe switch
        {
            SafeDwell.UpTo upTo => (upTo.Longest.Seconds, false, (string?)null),
            SafeDwell.WholeRange whole => (whole.Asked.Seconds, true, null),
            SafeDwell.None none => ((double?)null, false, none.Reason),
            _ => throw new InvalidOperationException("unknown kind of dwell"),
        };
        json.Number("longest_safe_dwell_s", longest, 2);
        json.WriteBoolean("longer_may_be_safe", isWhole);
        json.Text("no_safe_dwell_reason", reason);
        json.Number("cool_below_c", next.CoolDown.Target.DegreesCelsius, 1);
        json.Number("cool_for_s", next.CoolDown switch { CoolDown.Wait wait => wait.Time.Seconds, CoolDown.CoolAlready => 0, _ => null }, 1);
        DamageJson.WritePull(json, "pull_at_end", next.Pull);
        json.WriteEndObject();
    }
}
