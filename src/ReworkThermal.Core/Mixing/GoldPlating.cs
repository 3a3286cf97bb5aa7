using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>
/// Gold on a leg, a pad or an edge finger that dissolves in the solder, wholly: thin gold is gone within a second or two. Its mass is
/// area by thickness by density.
/// </summary>
/// <param name="Plated">Plated area that the solder wets, zero or more.</param>
/// <param name="Thickness">Thickness of the gold, zero or more.</param>
public sealed record GoldPlating(Area Plated, Length Thickness)
{
    private static readonly MassFractions _gold = MassFractions.Of((Element.Au, 1));

    /// <summary>Mass of the gold.</summary>
    /// <param name="properties">Density rules.</param>
    /// <returns>Mass.</returns>
    public Mass MassOf(SolderProperties properties)
    {
        ArgumentNullException.ThrowIfNull(properties);
        return Plated * Thickness * properties.SolidDensity(_gold);
    }

    /// <summary>
    /// Share of gold in the full joint after cycles of dipping in solder and wicking it off, each of which takes a share of the gold
    /// away; none is the joint soldered straight on the gold.
    /// </summary>
    /// <param name="joint">Mass of the solder in the joint, the gold not counted, above zero.</param>
    /// <param name="cycles">Number of cycles, zero or more.</param>
    /// <param name="removed">Share of the molten solder that one cycle takes away.</param>
    /// <param name="properties">Density rules.</param>
    /// <returns>Mass share of gold.</returns>
    public Ratio ShareAfter(Mass joint, int cycles, Ratio removed, SolderProperties properties)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(cycles);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(joint.Kilograms, nameof(joint));
        Mass left = MassOf(properties) * Math.Pow(1 - removed.DecimalFractions, cycles);
        return Ratio.FromDecimalFractions(left / (left + joint));
    }
}
