using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>Figures of copper dissolving in molten solder.</summary>
/// <param name="StillRate">Mass-transfer coefficient in still solder [m/s].</param>
/// <param name="FlowingRate">Mass-transfer coefficient in flowing or stirred solder [m/s].</param>
/// <param name="NickelFactor">Factor on both coefficients in solder that holds nickel: a layer on the copper slows its loss.</param>
/// <param name="SolubilityFactor">Factor on a computed solubility: 1 with its range.</param>
/// <param name="LeastWall">Least copper that should be left at the knee [m].</param>
/// <param name="HotStrength">Tensile strength of hot hole copper [Pa].</param>
/// <param name="CopperDensity">Density of copper [kg/m3].</param>
public sealed record CopperParameters(
    RatedEstimate<Speed> StillRate,
    RatedEstimate<Speed> FlowingRate,
    RatedEstimate<double> NickelFactor,
    RatedEstimate<double> SolubilityFactor,
    RatedEstimate<Length> LeastWall,
    RatedEstimate<Pressure> HotStrength,
    RatedEstimate<Density> CopperDensity);
