using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>Figures of the copper-to-laminate bond that do not depend on the class of laminate.</summary>
/// <param name="LossPerMelt">Share of the bond lost at each melting of the joint, 0 to 1.</param>
/// <param name="HotFloor">Share of the cold bond that is left far above Tg, 0 to 1.</param>
/// <param name="HotOffset">How far above Tg [K] the fall is half done.</param>
/// <param name="HotWidth">Width of the fall [K], above zero.</param>
/// <param name="LowProfilePeel">Peel strength of low-profile foil, which replaces the class's figure [N/mm].</param>
/// <param name="CapacityScatter">Scatter of pull tests as the standard deviation of the natural logarithm.</param>
/// <param name="TouchableShare">Share of the cold bond at which a cooling pad may be touched again, 0 to 1.</param>
public sealed record AdhesionParameters(
    RatedEstimate<double> LossPerMelt,
    RatedEstimate<double> HotFloor,
    RatedEstimate<TemperatureDelta> HotOffset,
    RatedEstimate<TemperatureDelta> HotWidth,
    RatedEstimate<ForcePerLength> LowProfilePeel,
    RatedEstimate<double> CapacityScatter,
    RatedEstimate<double> TouchableShare);
