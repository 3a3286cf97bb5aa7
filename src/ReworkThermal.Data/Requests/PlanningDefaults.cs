using ReworkThermal.Core.Planning;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Requests;

/// <summary>Limits that hold when a request does not set its own.</summary>
/// <param name="Limits">The limits, each with its source.</param>
/// <param name="Advice">Advice that goes with every plan, one sentence each.</param>
public sealed record PlanningDefaults(PlanLimits Limits, IReadOnlyList<string> Advice)
{
    /// <summary>Reads <c>planning.toml</c>.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    internal static PlanningDefaults Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        PlanLimits limits = new()
        {
            MostDwell = Limit(file, "most_dwell", t => t.Quantity("value", UnitTable.Durations, LimitRanges.LeastDwell, LimitRanges.MostDwell)),
            MostAirTime = Limit(file, "most_air_time", t => t.Quantity("value", UnitTable.Durations, LimitRanges.LeastDwell, LimitRanges.MostAirTime)),
            AirLead = Limit(file, "air_lead", t => t.Quantity("value", UnitTable.Durations, Duration.Zero, LimitRanges.MostAirTime)),
            MostIronSetting = Limit(file, "most_iron_setting", t => t.Quantity("value", UnitTable.Temperatures, LimitRanges.LeastIron, LimitRanges.MostIron)),
            WorkingTime = Limit(file, "working_time", t => t.Quantity("value", UnitTable.Durations, Duration.Zero, LimitRanges.MostWorkingTime)),
            Superheat = Limit(file, "superheat", t => t.Quantity("value", UnitTable.TemperatureDeltas, LimitRanges.LeastSuperheat, LimitRanges.MostSuperheat)),
            MostPadTemperature = Limit(file, "most_pad_temperature", t => t.Quantity("value", UnitTable.Temperatures, LimitRanges.LeastPad, LimitRanges.MostPad)),
            MostBudgetShare = Limit(file, "most_budget_share", t => t.Quantity("value", UnitTable.Ratios, LimitRanges.LeastBudget, LimitRanges.MostBudget)),
            MostBudgetAfter = Limit(file, "most_budget_after", t => t.Quantity("value", UnitTable.Ratios, LimitRanges.LeastBudget, LimitRanges.MostBudgetAfter)),
            MostPreheat = Limit(file, "most_preheat", t => t.Quantity("value", UnitTable.Temperatures, LimitRanges.LeastPreheat, LimitRanges.MostPreheat)),
            MostAddedShare = Limit(file, "most_added_share", t => t.Quantity("value", UnitTable.Ratios, Ratio.Zero, LimitRanges.MostAddedShare)),
            MostPasses = Limit(file, "most_passes", t => t.Whole("value", 1, LimitRanges.MostPasses)),
            PartRoom = Limit(file, "part_room", t => t.Quantity("value", UnitTable.TemperatureDeltas, TemperatureDelta.Zero, LimitRanges.MostPartRoom)),
            PartLag = Limit(file, "part_lag", t => t.Quantity("value", UnitTable.Durations, Duration.Zero, LimitRanges.MostPartLag)),
            LeadFreeOnly = false,
        };
        List<string> advice = [];
        foreach (FieldReader entry in file.Tables("advice"))
        {
            _ = entry.Provenance();
            advice.Add(entry.Text("text"));
        }

        file.Finish();
        return new PlanningDefaults(limits, advice);
    }

    private static Limit<T> Limit<T>(FieldReader file, string name, Func<FieldReader, T> read)
        where T : struct
    {
        FieldReader table = file.Table(name);
        return new Limit<T>(read(table), table.Provenance(), table.TextOrNull("note") ?? string.Empty);
    }
}
