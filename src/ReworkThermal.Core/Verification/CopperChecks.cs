using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Verification;

/// <summary>Solubility and dissolution of copper from the phase engine, beside independently computed figures.</summary>
/// <param name="engine">The engine on the shipped data.</param>
/// <param name="copper">The shipped figures of dissolution.</param>
internal sealed class CopperChecks(PhaseEngine engine, CopperParameters copper)
{
    /// <summary>Share by which a solubility may differ [1]: two compilations of the same published parameters.</summary>
    private const double SolubilityRoom = 0.10;

    /// <summary>Liquid tin near 260 °C [kg/m³]; from memory, as in the rate table.</summary>
    private const double LiquidTinKgPerM3 = 7000;

    // The half-and-half mix of the tables, percent by mass: Sn96.5Ag3Cu0.5 with Bi58Sn42.
    private static readonly MassFractions _mix = MassFractions
        .Of((Element.Sn, 96.5), (Element.Ag, 3), (Element.Cu, 0.5))
        .MixedWith(MassFractions.Of((Element.Bi, 58), (Element.Sn, 42)), 0.5);

    /// <summary>Initial rate at which still liquid tin, at first without copper, dissolves copper [µm/s].</summary>
    /// <param name="celsius">Temperature [°C].</param>
    /// <returns>The rate, or null when no solubility was found.</returns>
    internal double? TinRate(double celsius) =>
        Saturation(MassFractions.Of((Element.Sn, 1)), celsius) * PerShare(copper.StillRate.Central, LiquidTinKgPerM3);

    internal ComparedValue Solubility(ReferenceRow row)
    {
        double printed = row.Number("copper_wt_percent");
        return ComparedValue.Binding(VerificationArea.Damage, row, $"{AlloyOf(row)}: copper dissolved at {row["temperature_c"]} °C", "wt%", printed, (SolubilityRoom * printed) + row.Number("half_digit"), 100 * Saturation(row));
    }

    /// <summary>Initial rates k (ρL/ρCu)(ws - w0), with ws from the engine; the room is that of the solubility carried through the law.</summary>
    internal IEnumerable<ComparedValue> Rates(ReferenceRow row)
    {
        double? saturation = Saturation(row);
        foreach ((string column, string words, Speed rate) in new[] { ("still", "still solder", copper.StillRate.Central), ("flowing", "flowing solder", copper.FlowingRate.Central) })
        {
            double perShare = PerShare(rate, row.Number("density_kg_per_m3"));
            double printed = row.Number(column + "_um_per_s");
            double room = row.Number(column + "_half_digit") + (SolubilityRoom * (saturation ?? 0) * perShare);
            yield return ComparedValue.Binding(VerificationArea.Damage, row, $"{AlloyOf(row)}: copper lost to {words} at {row["temperature_c"]} °C", "µm/s", printed, room, perShare * (saturation - row.Number("copper_at_start")));
        }
    }

    private static string AlloyOf(ReferenceRow row) => row["alloy"] == "mix" ? "half SnAg3Cu0.5, half Bi58Sn42" : row["alloy"];

    private double? Saturation(ReferenceRow row)
    {
        MassFractions? solder = row["alloy"] == "mix" ? _mix : (AlloyDesignation.Read(row["alloy"]) as DesignationReading.Accepted)?.Fractions;
        return solder is null ? null : Saturation(solder, row.Number("temperature_c"));
    }

    private double? Saturation(MassFractions solder, double celsius) =>
        (engine.CopperSolubility(solder, Temperature.FromDegreesCelsius(celsius)) as SolubilityOutcome.Found)?.CopperMassFraction;

    // Rate [µm/s] for each unit of dissolved mass fraction that is still missing.
    private double PerShare(Speed rate, double densityKgPerM3) =>
        rate.MetersPerSecond * densityKgPerM3 / copper.CopperDensity.Central.KilogramsPerCubicMeter * 1e6;
}
