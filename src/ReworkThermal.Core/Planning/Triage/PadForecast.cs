using ReworkThermal.Core.Damage;

namespace ReworkThermal.Core.Planning.Triage;

/// <summary>What is to be expected of one pad. Bands are judgement; no probability of lifting is known.</summary>
/// <param name="Situation">The pad as it arrived.</param>
/// <param name="Touches">Touches that the plan gives it.</param>
/// <param name="Before">Band before the work; null for a pad that is gone.</param>
/// <param name="After">Band after it with central figures; null for a pad that is gone.</param>
/// <param name="AtWorst">Band after it with every figure at its unfavourable end; null for a pad that is gone.</param>
/// <param name="Wire">Whether it will need a wire.</param>
/// <param name="Reason">Why, one sentence.</param>
public sealed record PadForecast(
    PadSituation Situation,
    int Touches,
    DamageBand? Before,
    DamageBand? After,
    DamageBand? AtWorst,
    WireNeed Wire,
    string Reason);
