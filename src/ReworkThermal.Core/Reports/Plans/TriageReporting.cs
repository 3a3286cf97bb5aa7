using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Triage;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.Core.Reports.Plans;

/// <summary>Turns a forecast into an answer.</summary>
public static class TriageReporting
{
    /// <summary>The answer.</summary>
    /// <param name="request">The request.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="forecast">The forecast.</param>
    /// <param name="notes">Further assumptions, one sentence each.</param>
    /// <returns>The answer.</returns>
    public static TriageReport Of(PlanRequest request, Plan plan, JobForecast forecast, IReadOnlyList<string> notes)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(forecast);
        return new TriageReport(
            request.Title,
            PlanReporting.KindOf(plan.Kind),
            [.. forecast.Pads.Select(Line)],
            forecast.Touches,
            forecast.Least,
            forecast.Likely,
            forecast.Most,
            forecast.Wires(WireNeed.Certain),
            forecast.Wires(WireNeed.Possible),
            [.. Enum.GetValues<DamageBand>().Select(b => new BandCount(DamageWords.NameOf(b), forecast.PadsIn(b, false), forecast.PadsIn(b, true)))],
            [.. notes, .. forecast.Notes]);
    }

    private static PadOutlook Line(PadForecast pad) => new(
        pad.Situation.Pad.Value,
        pad.Situation.State switch
        {
            PadState.Sound => "sound",
            PadState.Loose => "loose",
            PadState.Missing => "missing",
            PadState.Wired => "wired",
            _ => "not looked at",
        },
        pad.Situation.Prior.Name,
        pad.Touches,
        pad.Before is { } before ? DamageWords.NameOf(before) : null,
        pad.After is { } after ? DamageWords.NameOf(after) : null,
        pad.AtWorst is { } worst ? DamageWords.NameOf(worst) : null,
        pad.Wire switch
        {
            WireNeed.No => "no",
            WireNeed.Possible => "possible",
            WireNeed.Certain => "certain",
            _ => throw new ArgumentOutOfRangeException(nameof(pad)),
        },
        pad.Reason);
}
