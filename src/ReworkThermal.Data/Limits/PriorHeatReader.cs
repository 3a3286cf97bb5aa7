using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Limits;

/// <summary>Reads <c>prior-heat.toml</c>.</summary>
internal static class PriorHeatReader
{

    internal static IReadOnlyList<PriorHeat> Read(FieldReader root, RatedFields rated)
    {
        List<PriorHeat> priors = [];
        foreach (FieldReader table in root.Tables("prior"))
        {
            PriorHeat read = new(
                table.Text("name"),
                table.Text("description"),
                Steps(table, "at_least"),
                Steps(table, "likely_more"),
                Steps(table, "at_most_more"),
                rated.Quantity(table, "copper_lost", UnitTable.Lengths, Length.Zero, Length.FromMicrometers(200)),
                rated.Provenance(table),
                RatedFields.Support(table));
            if (priors.Any(p => p.Name == read.Name))
            {
                throw table.Wrong("name", $"'{BadValue.Shown(read.Name)}' is used by an earlier entry; names must differ");
            }

            priors.Add(read);
        }

        root.Finish();
        return priors.Count > 0 ? priors : throw root.Wrong("prior", "is missing; give at least one [[prior]]");
    }

    private static List<PriorStep> Steps(FieldReader table, string name) =>
        [.. table.Tables(name).Select(step => new PriorStep(
            step.Quantity("temperature", UnitTable.Temperatures, Temperature.FromDegreesCelsius(-50), Temperature.FromDegreesCelsius(500)),
            step.Quantity("time", UnitTable.Durations, Duration.Zero, Duration.FromHours(24)),
            step.Truth("melts"),
            step.OneOf<HeatedRegion>("region")))];
}
