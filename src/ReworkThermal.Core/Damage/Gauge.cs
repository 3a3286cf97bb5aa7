namespace ReworkThermal.Core.Damage;

/// <summary>One way in which a pad wears out, and how far it has gone. Never a probability.</summary>
/// <param name="Kind">Which gauge.</param>
/// <param name="Value">What has accumulated, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the value in words, for example "share of the bond lost".</param>
/// <param name="Share">The value as a share of the limit at which the gauge counts as spent; 1 is spent.</param>
/// <param name="Band">Band of the central share.</param>
/// <param name="WorstBand">Band of the unfavourable end.</param>
/// <param name="Support">Weakest support among the figures that enter.</param>
/// <param name="Reason">What the figure rests on, one sentence.</param>
public sealed record Gauge(
    GaugeKind Kind,
    Spread Value,
    string Unit,
    Spread Share,
    DamageBand Band,
    DamageBand WorstBand,
    SupportLevel Support,
    string Reason);
