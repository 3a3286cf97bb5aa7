using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Phases;

/// <summary>
/// Solidification without diffusion in the solid and with full mixing in the liquid (E. Scheil, Z. Metallkd. 34 (1942) 70), which
/// is how real joints freeze: the last liquid is richer, and freezes lower, than equilibrium would have it.
/// </summary>
public sealed class ScheilPath
{
    /// <summary>Share of the mass below which remaining liquid is not followed; the end of freezing is where it is reached.</summary>
    public const double NegligibleLiquid = 1e-4;

    private readonly double[] _kelvin;
    private readonly double[] _liquid;

    internal ScheilPath(double[] kelvin, double[] liquid, IReadOnlyList<PhaseShare> solids, MassFractions lastLiquid, TemperatureDelta uncertainty, IReadOnlyList<string> caveats)
    {
        _kelvin = kelvin;
        _liquid = liquid;
        Solids = solids;
        LastLiquid = lastLiquid;
        Uncertainty = uncertainty;
        Caveats = caveats;
    }

    /// <summary>Temperature at which the first solid forms (the liquidus).</summary>
    public Temperature Start => Temperature.FromKelvins(_kelvin[0]);

    /// <summary>Temperature at which the last liquid freezes: where it does so in one reaction, or where 0.01 % of the mass is left.</summary>
    public Temperature End => Temperature.FromKelvins(_kelvin[^1]);

    /// <summary>All solids formed, with their shares of the mass and their mean compositions, by falling share.</summary>
    public IReadOnlyList<PhaseShare> Solids { get; }

    /// <summary>Composition of the last liquid.</summary>
    public MassFractions LastLiquid { get; }

    /// <summary>Half-width of the range in which these temperatures are expected; without supercooling.</summary>
    public TemperatureDelta Uncertainty { get; }

    /// <summary>What to know about this answer, one sentence each.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>Temperatures of the path, falling; two equal ones are a reaction.</summary>
    public IReadOnlyList<Temperature> Temperatures => [.. _kelvin.Select(k => Temperature.FromKelvins(k))];

    /// <summary>Share of the mass still liquid [kg/kg] at <see cref="Temperatures"/>.</summary>
    public IReadOnlyList<double> LiquidMassFractions => _liquid;

    /// <summary>Share of the mass still liquid on cooling to a temperature [kg/kg].</summary>
    /// <param name="temperature">Any temperature.</param>
    /// <returns>0 to 1; at the temperature of a reaction, the value before it.</returns>
    public double LiquidMassFractionAt(Temperature temperature) => LiquidAt([.. _kelvin.Zip(_liquid)], temperature.Kelvins);

    /// <summary>Reads a path of falling temperatures [K] and shares of liquid at a temperature.</summary>
    internal static double LiquidAt(IReadOnlyList<(double Kelvin, double Liquid)> path, double kelvin)
    {
        if (kelvin >= path[0].Kelvin)
        {
            return 1;
        }

        for (int i = 1; i < path.Count; i++)
        {
            if (path[i].Kelvin <= kelvin)
            {
                double width = path[i - 1].Kelvin - path[i].Kelvin;
                return width > 0 ? path[i].Liquid + ((path[i - 1].Liquid - path[i].Liquid) * (kelvin - path[i].Kelvin) / width) : path[i - 1].Liquid;
            }
        }

        return 0;
    }
}
