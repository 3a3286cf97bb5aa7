using ReworkThermal.Core.Boards;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Profiles;

/// <summary>Reads <c>profiles/laminates</c> and <c>profiles/metals</c>.</summary>
internal static class MaterialProfiles
{
    private const double LeastPathWattsPerKelvin = 1e-6;

    private static readonly ThermalConductivity _leastConductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.01);

    private static readonly Length _leastLength = Length.FromMillimeters(0.05);

    internal static Laminate Laminate(ProfileSource file) => file.Build(() => new Laminate
    {
        Name = file.Fields.Text("name"),
        ClassName = file.Fields.Text("class"),
        InPlaneConductivity = file.Estimate("in_plane_conductivity", UnitTable.Conductivities),
        ThroughConductivity = file.Estimate("through_conductivity", UnitTable.Conductivities),
        Density = file.Estimate("density", UnitTable.Densities),
        SpecificHeat = file.Estimate("specific_heat", UnitTable.SpecificHeats),
        SpecificHeatRise = file.Estimate("specific_heat_rise"),
        GlassTransition = file.Estimate("glass_transition", UnitTable.Temperatures, Temperature.FromDegreesCelsius(50), Temperature.FromDegreesCelsius(350)),
        Emissivity = file.Estimate("emissivity"),
    });

    internal static Metal Metal(ProfileSource file) => file.Build(() => new Metal
    {
        Name = file.Fields.Text("name"),
        Conductivity = file.Estimate("conductivity", UnitTable.Conductivities),
        Density = file.Estimate("density", UnitTable.Densities),
        SpecificHeat = file.Estimate("specific_heat", UnitTable.SpecificHeats),
    });

    private static LegPath Path(ProfileSource path) => path.Fields.Text("kind") switch
    {
        "plastic" => new LegPath.Plastic(
            path.Estimate("conductivity", UnitTable.Conductivities, _leastConductivity),
            path.Estimate("length", UnitTable.Lengths, _leastLength),
            path.Estimate("wall", UnitTable.Lengths, _leastLength)),
        "metal" => new LegPath.Metal(path.Estimate("length", UnitTable.Lengths, _leastLength)),
        string other => throw path.Fields.Wrong("kind", $"must be one of plastic, metal; got '{other}'"),
    };

    internal static Connector Connector(ProfileSource file) => file.Build(() => new Connector
    {
        Name = file.Fields.Text("name"),
        HeatCapacity = file.Estimate("heat_capacity", UnitTable.HeatCapacities),
        LegPath = file.Fields.Has("leg_path") ? Path(file.Table("leg_path")) : new LegPath.Stated(file.Estimate("leg_conductance_w_per_k", LeastPathWattsPerKelvin)),
        MetalBehind = file.Fields.Has("metal_behind") ? file.Fields.Quantity("metal_behind", UnitTable.Lengths, Length.Zero) : Length.Zero,
        Surface = file.Fields.Quantity("surface", UnitTable.Areas, Area.Zero),
        Loss = file.Estimate("loss", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.Zero),
        PlasticLimit = file.EstimateOrNull("plastic_limit", UnitTable.Temperatures),
    });
}
