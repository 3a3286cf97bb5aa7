namespace ReworkThermal.Core.Damage;

/// <summary>
/// The value at which each gauge counts as spent, and the shares of it at which a band begins. One set of shares for all gauges, so
/// that the gauge with the greatest share is also the one that sets the band.
/// </summary>
/// <param name="Laminate">Damage sum.</param>
/// <param name="AdhesionLoss">Share of the bond lost.</param>
/// <param name="Copper">Share of the spare copper used; 1 is the least wall.</param>
/// <param name="Barrel">Fatigue sum.</param>
/// <param name="Raised">Share from which the band is raised, 0 to 1.</param>
/// <param name="High">Share from which the band is high, 0 to 1, not below <paramref name="Raised"/>.</param>
public sealed record GaugeLimits(
    RatedEstimate<double> Laminate,
    RatedEstimate<double> AdhesionLoss,
    RatedEstimate<double> Copper,
    RatedEstimate<double> Barrel,
    RatedEstimate<double> Raised,
    RatedEstimate<double> High)
{
    /// <summary>Band of a share of a limit.</summary>
    /// <param name="share">Share, not negative.</param>
    /// <returns>The band; 1 and above is <see cref="DamageBand.Stop"/>.</returns>
    public DamageBand BandOf(double share) =>
        share >= 1 ? DamageBand.Stop
        : share >= High.Central ? DamageBand.High
        : share >= Raised.Central ? DamageBand.Raised
        : DamageBand.Low;
}
