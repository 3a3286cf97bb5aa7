using ReworkThermal.Core.Damage.Mechanisms;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Exposures;

/// <summary>The molten solder that works on a pad's copper during an exposure.</summary>
/// <param name="Solubility">How much copper this solder can hold.</param>
/// <param name="MoltenAbove">Interface temperature above which the solder dissolves copper; its flow temperature, or its solidus to be careful.</param>
/// <param name="LiquidDensity">Density of the liquid solder, above zero.</param>
/// <param name="VolumeToArea">Solder volume per wetted copper area [m], above zero; null for a bath that never saturates.</param>
/// <param name="FreshCopper">Copper in the charge when it was added [kg/kg]; null when it is the charge of the exposure before,
/// with the copper it has taken up since. Every wick-and-refill is a fresh charge.</param>
/// <param name="Motion">How the solder moves.</param>
public sealed record MoltenContact(
    ICopperSolubility Solubility,
    Temperature MoltenAbove,
    Density LiquidDensity,
    Length? VolumeToArea,
    double? FreshCopper,
    SolderMotion Motion)
{
    /// <summary>Whether the solder holds nickel, which slows the loss of copper.</summary>
    public bool HoldsNickel { get; init; }

    /// <summary>Solder volume per barrel wall area in a filled hole with a round lead, (D² - d²) / (4 D).</summary>
    /// <param name="hole">Finished hole diameter D, above zero.</param>
    /// <param name="lead">Lead diameter d, from zero to D.</param>
    /// <returns>The ratio [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hole is not above zero, or the lead does not fit.</exception>
    public static Length VolumeToAreaOfHole(Length hole, Length lead)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hole.Meters, nameof(hole));
        if (!(lead.Meters >= 0 && lead < hole))
        {
            throw new ArgumentOutOfRangeException(nameof(lead), "the lead must be thinner than the hole");
        }

        return Length.FromMeters(((hole.Meters * hole.Meters) - (lead.Meters * lead.Meters)) / (4 * hole.Meters));
    }
}

/// <summary>How the molten solder moves along the copper.</summary>
public enum SolderMotion
{
    /// <summary>Still, as in a hole or under a tip that rests.</summary>
    Still,

    /// <summary>Flowing or stirred, as in a solder fountain.</summary>
    Flowing,
}
