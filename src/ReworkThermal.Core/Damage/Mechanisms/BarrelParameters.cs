using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>Figures of barrel fatigue under through-thickness expansion.</summary>
/// <param name="FractureStrain">Ductility Df of the hole copper, 0 to 1.</param>
/// <param name="TensileStrength">Su of the hole copper [Pa].</param>
/// <param name="YieldStrength">Sy of the hole copper [Pa].</param>
/// <param name="CopperModulus">Elastic modulus of copper [Pa].</param>
/// <param name="PlasticModulus">Slope of the copper's stress past yield [Pa].</param>
/// <param name="ResinModulus">Through-thickness modulus of the hot laminate [Pa]; the low end is the kindest to the barrel.</param>
/// <param name="CopperExpansion">Expansion of copper [1/K].</param>
/// <param name="StartTemperature">Temperature at which the barrel is free of strain [°C].</param>
/// <param name="LifeFactor">Factor on the computed life: 1 with the error of such predictions as its range.</param>
/// <param name="LocalShare">Share of a full-board excursion that heating one hole counts for, 0 to 1.</param>
public sealed record BarrelParameters(
    RatedEstimate<double> FractureStrain,
    RatedEstimate<Pressure> TensileStrength,
    RatedEstimate<Pressure> YieldStrength,
    RatedEstimate<Pressure> CopperModulus,
    RatedEstimate<Pressure> PlasticModulus,
    RatedEstimate<Pressure> ResinModulus,
    RatedEstimate<CoefficientOfThermalExpansion> CopperExpansion,
    Temperature StartTemperature,
    RatedEstimate<double> LifeFactor,
    RatedEstimate<double> LocalShare);
