using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>What happens at an outer face. A face without a condition is insulated.</summary>
public abstract record FaceCondition
{
    private FaceCondition()
    {
    }

    /// <summary>Heat exchange with a gas or liquid: q = h (T_gas - T).</summary>
    /// <param name="Coefficient">Coefficient, zero or more.</param>
    /// <param name="Gas">Temperature of the gas.</param>
    public sealed record Convection(HeatTransferCoefficient Coefficient, TimeCourse Gas) : FaceCondition;

    /// <summary>Grey radiation: q = exchange sigma (T_surroundings^4 - T^4).</summary>
    /// <param name="ExchangeFactor">Emissivity against large surroundings, or the exchange factor of two faces; 0 to 1.</param>
    /// <param name="Surroundings">Temperature of the surroundings.</param>
    public sealed record Radiation(double ExchangeFactor, TimeCourse Surroundings) : FaceCondition;

    /// <summary>An imposed heat flux into the body.</summary>
    /// <param name="Value">Flux, negative when heat leaves.</param>
    public sealed record Flux(HeatFlux Value) : FaceCondition;

    /// <summary>An imposed surface temperature.</summary>
    /// <param name="Surface">Temperature of the surface.</param>
    public sealed record Held(TimeCourse Surface) : FaceCondition;
}
