using ReworkThermal.Core.Damage.Mechanisms;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Solubility of copper by a fit ln(wt%) = a - b/T; the rows and their source are in damage-copper-solubility.csv.</summary>
internal sealed class DamageSolubilityFit(double a, double b) : ICopperSolubility
{
    internal static DamageSolubilityFit LeadFree { get; } = new(7.322, 3672);

    internal static DamageSolubilityFit Mix { get; } = new(7.970, 4465);

    public double SaturationMassFraction(double celsius) => Math.Exp(a - (b / (celsius + 273.15))) / 100;
}
