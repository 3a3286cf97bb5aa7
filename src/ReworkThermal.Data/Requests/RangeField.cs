using ReworkThermal.Core.Evidence;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Requests;

/// <summary>Reads a table with a value, its range, its source and a note.</summary>
internal static class RangeField
{
    /// <summary>Reads the table.</summary>
    /// <param name="file">The file.</param>
    /// <param name="name">Name of the table.</param>
    /// <param name="read">Reads one of its figures by field name.</param>
    internal static Estimate<T> Read<T>(FieldReader file, string name, Func<FieldReader, string, T> read)
        where T : struct, IComparable<T>
    {
        FieldReader table = file.Table(name);
        _ = table.TextOrNull("note");
        (T central, T low, T high) = (read(table, "value"), read(table, "low"), read(table, "high"));
        return low.CompareTo(central) <= 0 && central.CompareTo(high) <= 0
            ? new Estimate<T>(central, low, high, table.Provenance())
            : throw table.Wrong("value", "must lie between low and high");
    }
}
