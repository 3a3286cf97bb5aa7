using System.Runtime.Serialization;
using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

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

/// <summary>A condition on part of an outer face.</summary>
/// <param name="Face">The face.</param>
/// <param name="From">Begin of the part: a radius on the flat faces, a height on rim and bore.</param>
/// <param name="To">End of the part.</param>
/// <param name="Condition">What happens there. Several patches may lie over each other; their effects add up.</param>
public sealed record FacePatch(ThermalFace Face, Length From, Length To, FaceCondition Condition);

/// <summary>An outer face of the modelled body.</summary>
public enum ThermalFace
{
    /// <summary>Upper face; positions on it are radii.</summary>
    [EnumMember(Value = "top")]
    Top,

    /// <summary>Lower face; positions on it are radii.</summary>
    [EnumMember(Value = "bottom")]
    Bottom,

    /// <summary>Outer rim; positions on it are heights.</summary>
    [EnumMember(Value = "rim")]
    Rim,

    /// <summary>Wall of a central bore; positions on it are heights.</summary>
    [EnumMember(Value = "bore")]
    Bore,
}
