using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>Physical properties of one element that the mixing rules of <see cref="SolderProperties"/> need.</summary>
/// <param name="SolidDensity">Density near 20 °C.</param>
/// <param name="MeltDensity">Density of the liquid at the melting point.</param>
/// <param name="MeltSlopeKgPerM3K">Fall of the liquid's density with temperature [kg/(m³ K)], positive.</param>
/// <param name="MeltingPoint">Melting point, where <paramref name="MeltDensity"/> holds.</param>
/// <param name="SolidConductivity">Thermal conductivity near 27 °C.</param>
/// <param name="MeltConductivity">Thermal conductivity of the liquid near the melting point.</param>
public sealed record ElementProperties(
    Estimate<Density> SolidDensity,
    Estimate<Density> MeltDensity,
    double MeltSlopeKgPerM3K,
    Temperature MeltingPoint,
    Estimate<ThermalConductivity> SolidConductivity,
    Estimate<ThermalConductivity> MeltConductivity);
