using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>A solid metal that carries heat: copper foil, a brass leg.</summary>
public sealed record Metal
{
    /// <summary>Name for reports.</summary>
    public required string Name { get; init; }

    /// <summary>Thermal conductivity near soldering temperatures, above zero.</summary>
    public required Estimate<ThermalConductivity> Conductivity
    {
        get;
        init => field = Dimension.Above(value, ThermalConductivity.Zero, "conductivity");
    }

    /// <summary>Density, above zero.</summary>
    public required Estimate<Density> Density
    {
        get;
        init => field = Dimension.Above(value, UnitsNet.Density.Zero, "density");
    }

    /// <summary>Specific heat, above zero.</summary>
    public required Estimate<SpecificEntropy> SpecificHeat
    {
        get;
        init => field = Dimension.Above(value, SpecificEntropy.Zero, "specific_heat");
    }
}
