using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>
/// A published point of a phase diagram that this project's own parameters were fitted to: a solid that is in equilibrium with a
/// liquid of known composition at a known temperature. An invariant reaction gives one point for each of its solids. A bound keeps a
/// solid that is not seen there from being stable.
/// </summary>
/// <param name="Solid">Name of the solid phase.</param>
/// <param name="Liquid">Composition of the liquid.</param>
/// <param name="Celsius">Published temperature [°C]; of a bound, the temperature the solid must stay below.</param>
/// <param name="IsBound">Whether this is a bound.</param>
/// <param name="SigmaKelvin">Weight of the point: its standard uncertainty [K], the uncertainty of the composition included.</param>
/// <param name="ResidualKelvin">Computed minus published temperature [K] with the parameters of the file; zero for a bound that is kept.</param>
/// <param name="Provenance">Where the point comes from.</param>
public sealed record FitPoint(string Solid, MassFractions Liquid, double Celsius, bool IsBound, double SigmaKelvin, double ResidualKelvin, Provenance Provenance);
