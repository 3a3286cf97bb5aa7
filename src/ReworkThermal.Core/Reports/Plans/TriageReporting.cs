using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Triage;

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
            [.. Enum.GetValues<DamageBand>().Select(b => new BandCount(b.Word(), forecast.PadsIn(b, false), forecast.PadsIn(b, true)))],
            [.. notes, .. forecast.Notes]);
    }

    private static PadOutlook Line(PadForecast pad) => new(
        pad.Situation.Pad.Value,
        pad.Situation.State?.Word() ?? "not looked at",
        pad.Situation.Prior.Name,
        pad.Touches,
        pad.Before?.Word(),
        pad.After?.Word(),
        pad.AtWorst?.Word(),
        pad.Wire.Word(),
        pad.Reason);
}
