using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Verification;
using ReworkThermal.Data.Reference;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Copper dissolution; sources in damage-copper-rates.csv and damage-copper-solubility.csv.</summary>
public sealed class DamageCopperTests
{
    /// <summary>The check double: the fits against the computed solubilities, over the rows they were fitted to.</summary>
    [Fact]
    public void Solubility_fits_agree_with_the_table()
    {
        IEnumerable<ReferenceRow> rows = ReferenceLibrary.Rows("damage-copper-solubility.csv").Where(r => r["fitted"] == "yes");
        foreach (ReferenceRow row in rows)
        {
            double fitted = 100 * new DamageSolubilityFit(row.Number("a"), row.Number("b_k")).SaturationMassFraction(row.Number("temperature_c"));
            double printed = row.Number("copper_wt_percent");
            Assert.True(Math.Abs(fitted - printed) <= row.Number("half_digit") + (0.022 * printed), $"{row["alloy"]} {row["temperature_c"]} C: {fitted} against {printed}");
        }
    }

    /// <summary>A curve sampled every 20 to 40 K gives the table's other rows; tolerance as in the file.</summary>
    [Fact]
    public void A_sampled_curve_reproduces_the_rows_between_its_samples()
    {
        foreach (IGrouping<string, ReferenceRow> alloy in ReferenceLibrary.Rows("damage-copper-solubility.csv").GroupBy(r => r["alloy"]))
        {
            ReferenceRow[] rows = [.. alloy];
            ReferenceRow[] samples = [.. rows.Where((_, i) => i % 2 == 0)];
            TabulatedSolubility curve = new([.. samples.Select(r => r.Number("temperature_c"))], [.. samples.Select(r => r.Number("copper_wt_percent") / 100)]);
            foreach (ReferenceRow row in rows.Where((r, i) => i % 2 == 1 && curve.Covers(r.Number("temperature_c"))))
            {
                double printed = row.Number("copper_wt_percent");
                double tolerance = (3 * row.Number("half_digit")) + (0.022 * printed);
                Assert.InRange(100 * curve.SaturationMassFraction(row.Number("temperature_c")), printed - tolerance, printed + tolerance);
            }
        }
    }

    /// <summary>Handbook check of the fit's size: SAC at 260 °C dissolves 1.54 to 1.55 % copper (independent computation).</summary>
    [Fact]
    public void Lead_free_solder_at_260_holds_the_worked_value() =>
        Assert.InRange(100 * DamageSolubilityFit.LeadFree.SaturationMassFraction(260), 1.535, 1.555);

    /// <summary>Watanabe et al., abstract (see damage.toml): more nickel is slower. The size is judgement; the harsh end grants nothing.</summary>
    [Fact]
    public void Nickel_in_the_solder_slows_the_loss_of_copper()
    {
        RatedEstimate<double> factor = DamageBench.Parameters.Copper.NickelFactor;
        Assert.True(factor.Low < factor.Central && factor.Central < factor.High && factor.High <= 1);
        MoltenContact bare = DamageBench.Charge(DamageSolubilityFit.LeadFree, 0.005, 7000, null);
        Assert.Equal(factor.Central, LossUm(bare with { HoldsNickel = true }, 265, 30) / LossUm(bare, 265, 30), 1e-9);
    }

    [Fact]
    public void Initial_rates_agree_with_every_row()
    {
        foreach (ReferenceRow row in ReferenceLibrary.Rows("damage-copper-rates.csv"))
        {
            DamageSolubilityFit fit = new(row.Number("a"), row.Number("b_k"));
            Check(SolderMotion.Still, "still", DamageBench.Parameters.Copper.StillRate);
            Check(SolderMotion.Flowing, "flowing", DamageBench.Parameters.Copper.FlowingRate);

            void Check(SolderMotion motion, string name, RatedEstimate<Speed> rate)
            {
                double temperature = row.Number("temperature_c");
                double density = row.Number("density_kg_per_m3");
                MoltenContact charge = DamageBench.Charge(fit, row.Number("copper_at_start"), density, 1000, motion);
                double computed = LossUm(charge, temperature, 0.01) / 0.01;
                double ofFit = 0.022 * fit.SaturationMassFraction(temperature) * rate.Central.MetersPerSecond * density / 8960 * 1e6;
                double printed = row.Number(name + "_um_per_s");
                Assert.True(
                    Math.Abs(computed - printed) <= row.Number(name + "_half_digit") + ofFit,
                    $"{row["alloy"]} {temperature} C {name}: {computed} against {printed}");
            }
        }
    }

    /// <summary>
    /// Depths by independent computation from the same law and fits: hole with lead at 265 °C for 30 s 1.38 µm, 1.4 µm for ever;
    /// flooded blob 3.74 µm in 30 s at 265 °C and 5.7 µm in 25 s at 300 °C; fountain 13.4 µm; low-melting mix 0.50 µm. Printed digits.
    /// </summary>
    [Theory]
    [InlineData(265, 30, 0.16, 1.38, 0.005)]
    [InlineData(265, 10000, 0.16, 1.4, 0.05)]
    [InlineData(265, 30, 1, 3.74, 0.005)]
    [InlineData(300, 25, 1, 5.7, 0.05)]
    public void Lead_free_depths_agree(double celsius, double seconds, double volumeToAreaMm, double depthUm, double halfDigit)
    {
        MoltenContact charge = DamageBench.Charge(DamageSolubilityFit.LeadFree, 0.005, 7000, volumeToAreaMm);
        Assert.Equal(depthUm, LossUm(charge, celsius, seconds), halfDigit);
    }

    [Fact]
    public void Fountain_and_mix_depths_agree()
    {
        Assert.Equal(13.4, LossUm(DamageBench.Charge(DamageSolubilityFit.LeadFree, 0.005, 7000, null, SolderMotion.Flowing), 265, 30), 0.05);
        Assert.Equal(0.50, LossUm(DamageBench.Charge(DamageSolubilityFit.Mix, 0.0025, 7800, 1), 235, 20), 0.005);
    }

    /// <summary>Volume to area of a 1.0 mm hole with a 0.6 mm lead: (1.0² - 0.6²)/(4 x 1.0) = 0.16 mm.</summary>
    [Fact]
    public void Volume_to_area_of_a_hole_agrees() =>
        Assert.Equal(0.16, MoltenContact.VolumeToAreaOfHole(Length.FromMillimeters(1), Length.FromMillimeters(0.6)).Millimeters, 1e-12);

    /// <summary>
    /// The still rate stands on two published depth rates of liquid tin on copper: 0.2 µm/s at 260 °C and 0.8 µm/s at 450 °C (abstract of
    /// Experiments on interaction of liquid tin with solid copper). The one central rate gives the first within 10 %; the second, which
    /// alone would ask for 1.1e-5 m/s and lies outside the fit of the solubility, must fall between the ends of the range.
    /// </summary>
    [Fact]
    public void Liquid_tin_dissolves_copper_at_the_published_rate()
    {
        MoltenContact tin = DamageBench.Charge(new DamageSolubilityFit(7.343, 3732), 0, 7000, 1000);
        Assert.InRange(LossUm(tin, 260, 0.01) / 0.01, 0.18, 0.22);
        PadDamage hot = After(tin, 450, 0.01);
        Assert.InRange(0.8, hot.Mild.Copper.LostM * 1e8, hot.Harsh.Copper.LostM * 1e8);
    }

    private static double LossUm(MoltenContact charge, double celsius, double seconds) => After(charge, celsius, seconds).Central.Copper.LostM * 1e6;

    private static PadDamage After(MoltenContact charge, double celsius, double seconds)
    {
        DamageModel model = DamageBench.Model("B");
        return model.After(
            model.Begin(DamageBench.Untouched),
            PadExposure.Steady(DamageBench.Celsius(celsius), Duration.FromSeconds(seconds), melted: true, charge));
    }
}
