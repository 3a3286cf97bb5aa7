using ReworkThermal.Core.Damage.Mechanisms;

namespace ReworkThermal.Core.Damage.Exposures;

/// <summary>What a pad has accumulated at one end of the parameter ranges.</summary>
/// <param name="Laminate">Delamination sums.</param>
/// <param name="Melts">Number of melts.</param>
/// <param name="Copper">Dissolved copper.</param>
/// <param name="Barrel">Fatigue sum.</param>
/// <param name="OpenExcursion">Share of the fatigue sum that the excursion still going on has used.</param>
internal readonly record struct DamageTrack(LaminateSums Laminate, int Melts, CopperTrack Copper, double Barrel, double OpenExcursion)
{
    /// <summary>Counts an expansion; one that goes on is charged only for what it adds.</summary>
    internal DamageTrack WithExcursion(double used, ExposureStart start)
    {
        double already = start == ExposureStart.StraightOn ? OpenExcursion : 0;
        return this with { Barrel = Barrel + Math.Max(0, used - already), OpenExcursion = Math.Max(used, already) };
    }
}
