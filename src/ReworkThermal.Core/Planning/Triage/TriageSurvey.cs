using System.Globalization;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Searching;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Triage;

/// <summary>Foresees a whole repair from one plan and the state of every pad.</summary>
/// <param name="limits">Damage limits.</param>
/// <param name="properties">Density and conductivity rules.</param>
/// <param name="effort">Bench time.</param>
public sealed class TriageSurvey(DamageLimits limits, SolderProperties properties, BenchEffort effort)
{
    /// <summary>Foresees a repair.</summary>
    /// <param name="request">The request of one joint that stands for all.</param>
    /// <param name="plan">The plan that all joints will be worked by.</param>
    /// <param name="pads">The pads, at least one.</param>
    /// <returns>The forecast.</returns>
    public JobForecast Of(PlanRequest request, Plan plan, IReadOnlyList<PadSituation> pads)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(pads);
        ArgumentOutOfRangeException.ThrowIfZero(pads.Count, nameof(pads));
        DamageModel model = Workload.Of(request, limits, properties).Damage;
        List<PadForecast> forecasts = [.. pads.Select(p => Of(model, plan, p))];
        double certain = forecasts.Count(f => f.Wire == WireNeed.Certain);
        double possible = forecasts.Count(f => f.Wire == WireNeed.Possible);
        return new JobForecast(
            forecasts,
            Time(plan, forecasts, certain, e => e.Low),
            Time(plan, forecasts, certain + (possible / 2), e => e.Central),
            Time(plan, forecasts, certain + possible, e => e.High),
            Notes(plan));
    }

    private static PadForecast Of(DamageModel model, Plan plan, PadSituation pad)
    {
        if (pad.State is PadState.Missing)
        {
            // The barrel still holds solder that has to come out, but there is no bond left to spend.
            return new PadForecast(pad, plan.Exposures.Count, null, null, null, pad.IsConnected ? WireNeed.Certain : WireNeed.No, "the pad is gone");
        }

        PadDamage start = pad.Damage ?? model.Begin(pad.Prior);
        HeatBudget before = model.Budget(start);
        HeatBudget after = model.Budget(model.After(start, plan.Exposures));
        bool loose = pad.State is PadState.Loose;
        bool spent = after.WorstBand == DamageBand.Stop;
        WireNeed wire = pad.IsConnected && (loose || spent) && pad.State is not PadState.Wired ? WireNeed.Possible : WireNeed.No;
        string seen = pad.State switch
        {
            PadState.Loose => "the pad is loose: heat it as little as possible; ",
            PadState.Wired => "the pad has a wire already; ",
            null => "nobody has looked at the pad; ",
            _ => string.Empty,
        };
        return new PadForecast(pad, plan.Exposures.Count, before.Band, after.Band, after.WorstBand, wire, seen + after.Reason);
    }

    private Duration Time(Plan plan, List<PadForecast> forecasts, double wires, Func<Estimate<Duration>, Duration> end)
    {
        double touches = forecasts.Sum(f => f.Touches);
        double dwell = forecasts.Count * (plan.First.Dwell.Seconds + (plan.Passes * plan.Refit.Dwell.Seconds));
        double seconds = end(effort.SetUp).Seconds
            + dwell
            + (touches * (end(effort.Handling).Seconds + end(effort.Cooling).Seconds))
            + (wires * end(effort.Wire).Seconds)
            + (forecasts.Count * end(effort.Check).Seconds);
        return Duration.FromSeconds(seconds);
    }

    private static List<string> Notes(Plan plan) =>
    [
        "every joint is taken to be like the one of the request and to be worked by the same plan",
        string.Create(CultureInfo.InvariantCulture, $"{plan.Exposures.Count} touches per joint, if every pass takes out as much as usual and nothing has to be repeated"),
        "bands are judgement: no published count of lifted pads against logged heat exists, so no chance of lifting is stated; 'at worst' puts every figure at its unfavourable end",
        "times for handling, cooling, wires and checks are judgement (profiles/limits/triage.toml): time your own work and change them",
    ];
}
