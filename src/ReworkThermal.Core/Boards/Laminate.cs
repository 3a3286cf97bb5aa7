using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>Epoxy-glass between the copper layers: conducts better along the board than through it.</summary>
public sealed record Laminate
{
    /// <summary>Name for reports, for example <c>high-Tg lead-free epoxy-glass</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Class by which the damage limits are looked up: a name in <c>profiles/limits/laminate-classes.toml</c>.</summary>
    public required string ClassName { get; init; }

    /// <summary>Conductivity along the board, above zero.</summary>
    public required Estimate<ThermalConductivity> InPlaneConductivity
    {
        get;
        init => field = Dimension.Above(value, ThermalConductivity.Zero, "in_plane_conductivity");
    }

    /// <summary>Conductivity through the board, above zero.</summary>
    public required Estimate<ThermalConductivity> ThroughConductivity
    {
        get;
        init => field = Dimension.Above(value, ThermalConductivity.Zero, "through_conductivity");
    }

    /// <summary>Density, above zero.</summary>
    public required Estimate<Density> Density
    {
        get;
        init => field = Dimension.Above(value, UnitsNet.Density.Zero, "density");
    }

    /// <summary>Specific heat below the glass transition, above zero.</summary>
    public required Estimate<SpecificEntropy> SpecificHeat
    {
        get;
        init => field = Dimension.Above(value, SpecificEntropy.Zero, "specific_heat");
    }

    /// <summary>Share by which the specific heat is higher above the glass transition, 0 to 2.</summary>
    public required Estimate<double> SpecificHeatRise
    {
        get;
        init => field = Dimension.Between(value, 0, 2, "specific_heat_rise");
    }

    /// <summary>Glass transition temperature.</summary>
    public required Estimate<Temperature> GlassTransition { get; init; }

    /// <summary>Emissivity of the masked surface, 0 to 1.</summary>
    public required Estimate<double> Emissivity
    {
        get;
        init => field = Dimension.Between(value, 0, 1, "emissivity");
    }
}
