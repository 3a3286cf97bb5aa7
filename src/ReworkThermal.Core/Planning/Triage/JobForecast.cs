using ReworkThermal.Core.Damage;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Triage;

/// <summary>What a repair is likely to take: a basis for an agreement, without prices.</summary>
/// <param name="Pads">One line per pad, in the order given.</param>
/// <param name="Least">Bench time with every figure at its favourable end and no possible wire.</param>
/// <param name="Likely">Bench time with central figures and half of the possible wires.</param>
/// <param name="Most">Bench time with every figure at its unfavourable end and every possible wire.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
public sealed record JobForecast(IReadOnlyList<PadForecast> Pads, Duration Least, Duration Likely, Duration Most, IReadOnlyList<string> Notes)
{
    /// <summary>Touches of the whole job.</summary>
    public int Touches => Pads.Sum(p => p.Touches);

    /// <summary>Pads by what is to be expected of their need for a wire.</summary>
    /// <param name="need">Which.</param>
    /// <returns>Number of pads.</returns>
    public int Wires(WireNeed need) => Pads.Count(p => p.Wire == need);

    /// <summary>Pads in a band after the work.</summary>
    /// <param name="band">Which.</param>
    /// <param name="atWorst">Whether every figure is at its unfavourable end.</param>
    /// <returns>Number of pads.</returns>
    public int PadsIn(DamageBand band, bool atWorst) => Pads.Count(p => (atWorst ? p.AtWorst : p.After) == band);
}
