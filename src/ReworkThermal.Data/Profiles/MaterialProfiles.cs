using ReworkThermal.Core.Boards;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Profiles;

/// <summary>Reads <c>profiles/laminates</c> and <c>profiles/metals</c>.</summary>
internal static class MaterialProfiles
{
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

    internal static Connector Connector(ProfileSource file) => file.Build(() => new Connector
    {
        Name = file.Fields.Text("name"),
        HeatCapacity = file.Estimate("heat_capacity", UnitTable.HeatCapacities),
        LegConductanceWattsPerKelvin = file.Estimate("leg_conductance_w_per_k"),
        Surface = file.Fields.Quantity("surface", UnitTable.Areas, Area.Zero),
        Loss = file.Estimate("loss", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.Zero),
        PlasticLimit = file.EstimateOrNull("plastic_limit", UnitTable.Temperatures),
    });
}
