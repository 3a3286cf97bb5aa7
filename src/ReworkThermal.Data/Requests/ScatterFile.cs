using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Requests;

/// <summary>Reads <c>profiles/limits/uncertainty.toml</c>: how far one bench differs from the next.</summary>
internal static class ScatterFile
{
    private static readonly TemperatureDelta _mostOffset = TemperatureDelta.FromKelvins(100);

    private const double LeastFactor = 0.1;
    private const double MostFactor = 10;

    /// <summary>Reads the file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>What it says.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    internal static BenchScatter Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        BenchScatter scatter = new()
        {
            TipOffset = Offset(file, "tip_offset", -_mostOffset),
            RoomOffset = Offset(file, "room_offset", -_mostOffset),
            BoardOffset = Offset(file, "board_offset", -_mostOffset),
            PlaneCoverage = Factor(file, "plane_coverage"),
            Relief = Factor(file, "relief"),
            SolderFill = Factor(file, "solder_fill"),
            AirFilm = Factor(file, "air_film"),
            TimingError = Factor(file, "timing_error", 0.001, 1),
            ReadingError = Offset(file, "reading_error", TemperatureDelta.FromKelvins(0.1)),
        };
        file.Finish();
        return scatter;
    }

    private static Estimate<TemperatureDelta> Offset(FieldReader file, string name, TemperatureDelta least) =>
        Range(file, name, (table, field) => table.Quantity(field, UnitTable.TemperatureDeltas, least, _mostOffset));

    private static Estimate<double> Factor(FieldReader file, string name, double least = LeastFactor, double most = MostFactor) =>
        Range(file, name, (table, field) => table.Number(field, least, most));

    private static Estimate<T> Range<T>(FieldReader file, string name, Func<FieldReader, string, T> read)
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
