using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>Figures of intermetallic growth, for information only.</summary>
/// <param name="SolidRate">Parabolic rate constant of solid growth before the exponential [µm²/s].</param>
/// <param name="SolidEnergy">Activation energy of solid growth [J/mol].</param>
/// <param name="LiquidThickness">Thickness after the reference time in liquid solder [m].</param>
/// <param name="LiquidReferenceTime">That time [s].</param>
/// <param name="LiquidExponent">Exponent of time in liquid growth.</param>
public sealed record IntermetallicParameters(
    RatedEstimate<double> SolidRate,
    RatedEstimate<MolarEnergy> SolidEnergy,
    RatedEstimate<Length> LiquidThickness,
    Duration LiquidReferenceTime,
    RatedEstimate<double> LiquidExponent);
