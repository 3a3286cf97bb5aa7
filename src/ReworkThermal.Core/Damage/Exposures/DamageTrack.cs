using ReworkThermal.Core.Damage.Mechanisms;

namespace ReworkThermal.Core.Damage.Exposures;

/// <summary>What a pad has accumulated at one end of the parameter ranges.</summary>
/// <param name="Laminate">Delamination sums.</param>
/// <param name="Melts">Number of melts.</param>
/// <param name="Dose">Heat of the melts.</param>
/// <param name="Copper">Dissolved copper.</param>
/// <param name="Barrel">Fatigue sum.</param>
/// <param name="OpenExcursion">Share of the fatigue sum that the excursion still going on has used.</param>
internal readonly record struct DamageTrack(LaminateSums Laminate, int Melts, MeltDose Dose, CopperTrack Copper, double Barrel, double OpenExcursion)
{
    /// <summary>Counts an expansion; one that goes on is charged only for what it adds.</summary>
    internal DamageTrack WithExcursion(double used, ExposureStart start)
    {
        double already = start == ExposureStart.StraightOn ? OpenExcursion : 0;
        return this with { Barrel = Barrel + Math.Max(0, used - already), OpenExcursion = Math.Max(used, already) };
    }
}

/// <summary>Heat of melts, in standard melts.</summary>
/// <param name="Counted">Sum over all melts, each up to the most that one counts as.</param>
/// <param name="Covered">The part of it that is heat of the damage sum too, so that the same heat does not count twice.</param>
/// <param name="Open">Heat of the latest melt so far, which an exposure straight on adds to.</param>
internal readonly record struct MeltDose(double Counted, double Covered, double Open)
{
    /// <summary>With the heat of one more exposure.</summary>
    /// <param name="dose">Its heat.</param>
    /// <param name="own">What of its dose is heat of the damage sum, in standard melts.</param>
    /// <param name="newMelt">Whether it is a melt of its own.</param>
    /// <param name="most">Most that one melt counts as.</param>
    internal MeltDose With(double dose, double own, bool newMelt, double most)
    {
        double before = newMelt ? 0 : Open;
        double counted = Math.Min(most, before + dose) - Math.Min(most, before);
        return new MeltDose(Counted + counted, Covered + Math.Min(counted, own), before + dose);
    }
}
