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
        RangeField.Read(file, name, (table, field) => table.Quantity(field, UnitTable.TemperatureDeltas, least, _mostOffset));

    private static Estimate<double> Factor(FieldReader file, string name, double least = LeastFactor, double most = MostFactor) =>
        RangeField.Read(file, name, (table, field) => table.Number(field, least, most));
}
