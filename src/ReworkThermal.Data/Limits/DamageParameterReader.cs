using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Limits;

/// <summary>Reads <c>damage.toml</c>.</summary>
internal static class DamageParameterReader
{
    private static readonly Pressure _leastModulus = Pressure.FromMegapascals(1);
    private static readonly Pressure _mostModulus = Pressure.FromGigapascals(1000);

    internal static DamageParameters Read(FieldReader root, RatedFields rated)
    {
        DamageParameters read = new(
            Laminate(root.Table("laminate"), rated),
            Adhesion(root.Table("adhesion"), rated),
            Copper(root.Table("copper"), rated),
            Barrel(root.Table("barrel"), rated),
            Pull(root.Table("pull"), rated),
            Intermetallic(root.Table("intermetallic"), rated),
            MeltCounts(root, rated),
            Gauges(root.Table("gauges"), rated));
        root.Finish();
        return read;
    }

    private static LaminateParameters Laminate(FieldReader table, RatedFields rated) => new(
        rated.Quantity(table, "activation_energy", UnitTable.MolarEnergies, MolarEnergy.FromKilojoulesPerMole(10), MolarEnergy.FromKilojoulesPerMole(500)),
        table.Quantity("anchor_temperature", UnitTable.Temperatures, Celsius(100), Celsius(400)),
        rated.Quantity(table, "extrapolated_above", UnitTable.Temperatures, Celsius(100), Celsius(500)),
        rated.Quantity(table, "interface_error", UnitTable.TemperatureDeltas, TemperatureDelta.FromKelvins(0.1), TemperatureDelta.FromKelvins(100)));

    private static AdhesionParameters Adhesion(FieldReader table, RatedFields rated) => new(
        rated.Number(table, "loss_per_melt", 0, 1),
        rated.Number(table, "dose_share", 0, 1),
        table.Quantity("standard_temperature", UnitTable.Temperatures, Celsius(150), Celsius(400)),
        table.Quantity("standard_time", UnitTable.Durations, Duration.FromSeconds(0.1), Duration.FromMinutes(10)),
        rated.Number(table, "most_dose", 1, 1000),
        rated.Number(table, "hot_floor", 0, 1),
        rated.Quantity(table, "hot_offset", UnitTable.TemperatureDeltas, TemperatureDelta.FromKelvins(-50), TemperatureDelta.FromKelvins(100)),
        rated.Quantity(table, "hot_width", UnitTable.TemperatureDeltas, TemperatureDelta.FromKelvins(0.1), TemperatureDelta.FromKelvins(100)),
        rated.Quantity(table, "low_profile_peel", UnitTable.ForcesPerLength, ForcePerLength.FromNewtonsPerMillimeter(0.01), ForcePerLength.FromNewtonsPerMillimeter(10)),
        rated.Number(table, "capacity_scatter", 0, 3),
        rated.Number(table, "touchable_share", 0.01, 0.99));

    private static CopperParameters Copper(FieldReader table, RatedFields rated) => new(
        rated.Quantity(table, "still_rate", UnitTable.Speeds, Speed.Zero, Speed.FromMetersPerSecond(0.01)),
        rated.Quantity(table, "flowing_rate", UnitTable.Speeds, Speed.Zero, Speed.FromMetersPerSecond(0.01)),
        rated.Number(table, "solubility_factor", 0.1, 10),
        rated.Number(table, "nickel_factor", 0.01, 1),
        rated.Quantity(table, "least_wall", UnitTable.Lengths, Length.Zero, Length.FromMicrometers(500)),
        rated.Quantity(table, "hot_strength", UnitTable.Pressures, _leastModulus, _mostModulus),
        rated.Quantity(table, "density", UnitTable.Densities, Density.FromKilogramsPerCubicMeter(1000), Density.FromKilogramsPerCubicMeter(25000)));

    private static BarrelParameters Barrel(FieldReader table, RatedFields rated) => new(
        rated.Number(table, "fracture_strain", 0.001, 1),
        rated.Quantity(table, "tensile_strength", UnitTable.Pressures, _leastModulus, _mostModulus),
        rated.Quantity(table, "yield_strength", UnitTable.Pressures, _leastModulus, _mostModulus),
        rated.Quantity(table, "copper_modulus", UnitTable.Pressures, _leastModulus, _mostModulus),
        rated.Quantity(table, "plastic_modulus", UnitTable.Pressures, _leastModulus, _mostModulus),
        rated.Quantity(table, "resin_modulus", UnitTable.Pressures, _leastModulus, _mostModulus),
        rated.Quantity(table, "copper_expansion", UnitTable.Expansions, CoefficientOfThermalExpansion.Zero, CoefficientOfThermalExpansion.FromPpmPerKelvin(100)),
        table.Quantity("start_temperature", UnitTable.Temperatures, Celsius(-50), Celsius(100)),
        rated.Number(table, "life_factor", 0.01, 100),
        rated.Number(table, "local_share", 0, 1));

    private static PullParameters Pull(FieldReader table, RatedFields rated) => new(
        Demand(table, "free", rated),
        Demand(table, "nudged", rated),
        Demand(table, "pried", rated),
        Demand(table, "pressed_edge", rated));

    private static RatedEstimate<Force> Demand(FieldReader table, string name, RatedFields rated) =>
        rated.Quantity(table, name, UnitTable.Forces, Force.FromNewtons(1e-6), Force.FromNewtons(1000));

    private static IntermetallicParameters Intermetallic(FieldReader table, RatedFields rated) => new(
        rated.Number(table, "solid_rate_um2_per_s", 0, 1e12),
        rated.Quantity(table, "solid_energy", UnitTable.MolarEnergies, MolarEnergy.Zero, MolarEnergy.FromKilojoulesPerMole(500)),
        rated.Quantity(table, "liquid_thickness", UnitTable.Lengths, Length.Zero, Length.FromMicrometers(100)),
        table.Quantity("liquid_reference_time", UnitTable.Durations, Duration.FromSeconds(0.1), Duration.FromHours(24)),
        rated.Number(table, "liquid_exponent", 0.01, 1));

    private static List<PublishedMeltCount> MeltCounts(FieldReader root, RatedFields rated)
    {
        List<PublishedMeltCount> counts = [];
        foreach (FieldReader table in root.Tables("melt_count"))
        {
            int count = table.Whole("count", 1, 1000);
            if (counts.Count > 0 && count <= counts[^1].Count)
            {
                throw table.Wrong("count", "must be above the count before it; list the fewest first");
            }

            counts.Add(new PublishedMeltCount(count, table.Text("test"), rated.Provenance(table), RatedFields.Support(table)));
        }

        return counts.Count > 0 ? counts : throw root.Wrong("melt_count", "is missing; give at least one [[melt_count]]");
    }

    private static GaugeLimits Gauges(FieldReader table, RatedFields rated)
    {
        GaugeLimits read = new(
            rated.Number(table, "laminate", 0.01, 100),
            rated.Number(table, "adhesion_loss", 0.01, 1),
            rated.Number(table, "copper", 0.01, 100),
            rated.Number(table, "barrel", 0.01, 100),
            rated.Number(table, "raised", 0, 1),
            rated.Number(table, "high", 0, 1));
        return read.Raised.Central <= read.High.Central ? read : throw table.Wrong("high", "must not be below raised");
    }

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);
}
