namespace ReworkThermal.Core.Damage;

/// <summary>
/// Share of a pad's tolerable damage that is used: that of the gauge with the greatest share. The share never falls when exposures are
/// added. It is no probability of lifting: no published count of lifted pads against logged heat exists to calibrate one.
/// </summary>
/// <param name="Gauges">The gauges that apply, in the order of <see cref="GaugeKind"/>; at least laminate, adhesion, copper and melts.</param>
/// <param name="Governing">The gauge with the greatest central share.</param>
/// <param name="Share">Greatest share over the gauges at the favourable end, the centre and the unfavourable end; 1 is spent.</param>
/// <param name="Band">Band of the central share.</param>
/// <param name="WorstBand">Band of the unfavourable end.</param>
/// <param name="Reason">Why the band is what it is, one sentence.</param>
/// <param name="LaminateIfCooler">Central laminate share if every interface temperature was lower by the stated error.</param>
/// <param name="LaminateIfHotter">Central laminate share if every interface temperature was higher by the stated error.</param>
/// <param name="IntermetallicUm">Thickness of the intermetallic layer [µm], for information only.</param>
/// <param name="Omissions">Gauges that do not apply or are incomplete.</param>
/// <param name="Assumptions">What was assumed, one sentence each.</param>
public sealed record HeatBudget(
    IReadOnlyList<Gauge> Gauges,
    Gauge Governing,
    Spread Share,
    DamageBand Band,
    DamageBand WorstBand,
    string Reason,
    double LaminateIfCooler,
    double LaminateIfHotter,
    Spread IntermetallicUm,
    IReadOnlyList<GaugeOmission> Omissions,
    IReadOnlyList<string> Assumptions)
{
    /// <summary>What is left of the budget: 1 minus the share at each end; below zero when more than the limit is used.</summary>
    public Spread Headroom => new(1 - Share.High, 1 - Share.Central, 1 - Share.Low);

    /// <summary>Finds a gauge.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>The gauge, or null when it does not apply to this pad.</returns>
    public Gauge? GaugeOrNull(GaugeKind kind) => Gauges.FirstOrDefault(g => g.Kind == kind);
}
