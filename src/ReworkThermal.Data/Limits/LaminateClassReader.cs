using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Limits;

/// <summary>Reads <c>laminate-classes.toml</c>.</summary>
internal static class LaminateClassReader
{
    internal static IReadOnlyList<LaminateLimits> Read(FieldReader root, RatedFields rated)
    {
        List<LaminateLimits> classes = [];
        foreach (FieldReader table in root.Tables("class"))
        {
            LaminateLimits read = One(table, rated);
            if (classes.Any(c => c.Name == read.Name))
            {
                throw table.Wrong("name", $"'{BadValue.Shown(read.Name)}' is used by an earlier class; names must differ");
            }

            classes.Add(read);
        }

        root.Finish();
        return classes.Count > 0 ? classes : throw root.Wrong("class", "is missing; give at least one [[class]]");
    }

    private static LaminateLimits One(FieldReader table, RatedFields rated)
    {
        LaminateLimits read = new(
            table.Text("name"),
            table.Text("description"),
            rated.Quantity(table, "t260", UnitTable.Durations, Duration.FromSeconds(1), Duration.FromHours(100)),
            table.Truth("t260_is_lower_bound"),
            rated.Quantity(table, "glass_transition", UnitTable.Temperatures, Temperature.FromDegreesCelsius(60), Temperature.FromDegreesCelsius(350)),
            rated.Quantity(table, "decomposition", UnitTable.Temperatures, Temperature.FromDegreesCelsius(200), Temperature.FromDegreesCelsius(600)),
            rated.Quantity(table, "peel_strength", UnitTable.ForcesPerLength, ForcePerLength.FromNewtonsPerMillimeter(0.01), ForcePerLength.FromNewtonsPerMillimeter(10)),
            rated.Quantity(table, "expansion_below", UnitTable.Expansions, Ppm(0), Ppm(500)),
            rated.Quantity(table, "expansion_above", UnitTable.Expansions, Ppm(0), Ppm(1000)),
            table.Texts("notes"));
        return read.Decomposition.Central > read.GlassTransition.Central
            ? read
            : throw table.Wrong("decomposition", "must be above glass_transition");
    }

    private static CoefficientOfThermalExpansion Ppm(double value) => CoefficientOfThermalExpansion.FromPpmPerKelvin(value);
}
