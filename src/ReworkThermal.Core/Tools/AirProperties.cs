namespace ReworkThermal.Core.Tools;

/// <summary>
/// Properties of dry air at atmospheric pressure, 250 to 1000 K, by Sutherland's formulas with the constants of F.M. White, Viscous
/// Fluid Flow (1974), tables 1-2 and 1-3 (from memory; within 3 % of the tables in Incropera et al., appendix A).
/// </summary>
internal static class AirProperties
{
    /// <summary>Density of air at 20 °C and 101.325 kPa [kg/m3].</summary>
    internal const double DensityAt20C = 1.204;

    /// <summary>Prandtl number of air between 300 and 900 K, within 3 %.</summary>
    internal const double Prandtl = 0.69;

    /// <summary>Specific heat of air, mean of 300 to 700 K [J/kgK].</summary>
    internal const double SpecificHeat = 1030;

    private const double ZeroK = 273.15;

    /// <summary>Dynamic viscosity [Pa s].</summary>
    internal static double Viscosity(double kelvin) => 1.716e-5 * Math.Pow(kelvin / ZeroK, 1.5) * (ZeroK + 110.4) / (kelvin + 110.4);

    /// <summary>Thermal conductivity [W/mK].</summary>
    internal static double Conductivity(double kelvin) => 0.0241 * Math.Pow(kelvin / ZeroK, 1.5) * (ZeroK + 194) / (kelvin + 194);
}
