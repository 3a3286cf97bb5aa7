using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>A strip of braid as far as its heat goes.</summary>
/// <param name="Width">Width.</param>
/// <param name="Thickness">Thickness under the tip.</param>
/// <param name="HeatedLength">Length that is heated.</param>
/// <param name="CopperShare">Share of its volume that is copper, 0 to 1; solder fills the rest.</param>
/// <param name="Conductivity">Conductivity across it.</param>
/// <param name="TipContact">Contact of the tip with it, per area.</param>
/// <param name="DryContact">Contact with the joint until the solder under it is molten, per area.</param>
/// <param name="WettedContact">Contact with the joint once it has wetted, per area.</param>
/// <param name="WettingTime">Time constant of wetting.</param>
public sealed record BraidStrip(
    Estimate<Length> Width,
    Estimate<Length> Thickness,
    Estimate<Length> HeatedLength,
    Estimate<double> CopperShare,
    Estimate<ThermalConductivity> Conductivity,
    Estimate<HeatTransferCoefficient> TipContact,
    Estimate<HeatTransferCoefficient> DryContact,
    Estimate<HeatTransferCoefficient> WettedContact,
    Estimate<Duration> WettingTime);
