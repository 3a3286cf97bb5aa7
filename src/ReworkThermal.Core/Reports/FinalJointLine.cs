using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>A joint after its passes and the refit.</summary>
/// <param name="Composition">What it is made of, by mass.</param>
/// <param name="Solidus">Its solidus.</param>
/// <param name="ScheilEnd">Where its last liquid freezes on real cooling.</param>
/// <param name="LiquidFractionAt100C">Share of the mass still liquid at 100 °C [kg/kg].</param>
/// <param name="LiquidFractionAt140C">Share of the mass still liquid at 140 °C [kg/kg].</param>
/// <param name="IsClean">Whether the low-melting share is small enough.</param>
public sealed record FinalJointLine(
    MassFractions Composition,
    Temperature Solidus,
    Temperature ScheilEnd,
    double LiquidFractionAt100C,
    double LiquidFractionAt140C,
    bool IsClean);
