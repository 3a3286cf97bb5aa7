using ReworkThermal.Core.Evidence;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Alloys;

/// <summary>Flux-cored solder wire as it is sold.</summary>
/// <param name="FluxShare">Share of the wire's mass that is flux.</param>
/// <param name="FluxDensity">Density of the flux.</param>
public sealed record WireStock(Estimate<Ratio> FluxShare, Estimate<Density> FluxDensity)
{
    /// <summary>Reads <c>wire.toml</c>.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The figures.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    internal static WireStock Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        WireStock stock = new(
            file.Estimate("flux_share", UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(10)),
            file.Estimate("flux_density", UnitTable.Densities));
        file.Finish();
        return stock;
    }
}
