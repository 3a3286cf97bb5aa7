using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>
/// The whole table of copper solubilities and of initial dissolution rates, from this project's own phase engine. Sources in
/// damage-copper-solubility.csv and damage-copper-rates.csv; both were computed outside this project from the same published solder
/// parameters (U.R. Kattner, 1999), so they check the program, not the data.
/// </summary>
public sealed class CopperFromEngineTests
{
    /// <summary>Allowed difference of a solubility: 10 %, and half a unit of the last printed digit.</summary>
    private const double SolubilityTolerance = 0.10;

    private static readonly MassFractions _mix = PhasesData.TinSilverCopper.MixedWith(PhasesData.BismuthTin, 0.5);

    [Fact]
    public void Every_row_of_the_solubility_table_is_met()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = DamageReference.Rows("damage-copper-solubility.csv");
        Assert.True(rows.Count > 40);
        Assert.Empty(rows
            .Select(row => (Row: row, Computed: Percent(row["alloy"], row.Number("temperature_c")), Printed: row.Number("copper_wt_percent")))
            .Where(r => !(Math.Abs(r.Computed - r.Printed) <= (SolubilityTolerance * r.Printed) + r.Row.Number("half_digit")))
            .Select(r => FormattableString.Invariant($"{r.Row["alloy"]} at {r.Row["temperature_c"]} °C: {r.Computed:0.####} against {r.Printed}")));
    }

    /// <summary>
    /// Initial rates k (rhoL/rhoCu)(ws - w0) with ws from the engine. Tolerance: that of the solubility, carried through the law, and half a
    /// unit of the last printed digit.
    /// </summary>
    [Fact]
    public void Every_row_of_the_rate_table_is_met()
    {
        CopperParameters copper = DamageBench.Parameters.Copper;
        List<string> misses = [];
        foreach (IReadOnlyDictionary<string, string> row in DamageReference.Rows("damage-copper-rates.csv"))
        {
            double saturation = Percent(row["alloy"], row.Number("temperature_c")) / 100;
            Check("still", copper.StillRate.Central);
            Check("flowing", copper.FlowingRate.Central);

            void Check(string name, Speed rate)
            {
                double perShareUmPerS = rate.MetersPerSecond * row.Number("density_kg_per_m3") / copper.CopperDensity.Central.KilogramsPerCubicMeter * 1e6;
                double computed = perShareUmPerS * (saturation - row.Number("copper_at_start"));
                double printed = row.Number(name + "_um_per_s");
                if (!(Math.Abs(computed - printed) <= (SolubilityTolerance * saturation * perShareUmPerS) + row.Number(name + "_half_digit")))
                {
                    misses.Add(FormattableString.Invariant($"{row["alloy"]} at {row["temperature_c"]} °C, {name}: {computed:0.####} against {printed}"));
                }
            }
        }

        Assert.Empty(misses);
    }

    private static double Percent(string alloy, double celsius)
    {
        MassFractions solder = alloy == "mix" ? _mix : Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(alloy)).Fractions;
        return 100 * Assert.IsType<SolubilityOutcome.Found>(PhasesData.Engine.CopperSolubility(solder, Temperature.FromDegreesCelsius(celsius))).CopperMassFraction;
    }
}
