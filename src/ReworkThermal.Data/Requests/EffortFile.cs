using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Triage;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Requests;

/// <summary>Reads <c>profiles/limits/triage.toml</c>: bench time of a repair.</summary>
internal static class EffortFile
{
    private static readonly Duration _most = Duration.FromHours(24);

    /// <summary>Reads the file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>What it says.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    internal static BenchEffort Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        BenchEffort effort = new(Time(file, "set_up"), Time(file, "handling"), Time(file, "cooling"), Time(file, "wire"), Time(file, "check"));
        file.Finish();
        return effort;
    }

    private static Estimate<Duration> Time(FieldReader file, string name) =>
        RangeField.Read(file, name, (table, field) => table.Quantity(field, UnitTable.Durations, Duration.Zero, _most));
}
