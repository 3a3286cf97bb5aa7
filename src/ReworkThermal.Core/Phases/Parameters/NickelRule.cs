using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>What is said of nickel, which is carried along without a share in the equilibria.</summary>
/// <param name="LeastSaturation">Least mass fraction that molten tin-rich solder may hold near 250 °C [kg/kg].</param>
/// <param name="MostSaturation">Greatest mass fraction that it may hold there [kg/kg].</param>
/// <param name="UncertaintyKelvin">What nickel up to saturation adds to the uncertainty of a melting temperature [K].</param>
/// <param name="KelvinPerPercent">What each percent by mass above the least saturation adds, for the tin that its crystals bind [K].</param>
/// <param name="Provenance">Where the saturation comes from.</param>
public sealed record NickelRule(double LeastSaturation, double MostSaturation, double UncertaintyKelvin, double KelvinPerPercent, Provenance Provenance)
{
    /// <summary>Mass fraction of nickel in Ni3Sn4, from the formula and IUPAC 2021 atomic weights [kg/kg].</summary>
    public const double InCrystals = 3 * 58.693 / ((3 * 58.693) + (4 * 118.71));

    /// <summary>Uncertainty that a content of nickel adds [K].</summary>
    internal double KelvinFor(double nickel) =>
        nickel > 0 ? UncertaintyKelvin + (KelvinPerPercent * 100 * Math.Max(0, nickel - LeastSaturation)) : 0;
}
