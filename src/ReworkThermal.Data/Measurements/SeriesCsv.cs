using System.Globalization;
using ReworkThermal.Core.HeatFlow;

namespace ReworkThermal.Data.Measurements;

/// <summary>
/// A measured temperature series as comma-separated text (RFC 4180): a row of column names with <c>time_s</c> and
/// <c>temperature_c</c>, then one row per sample, times rising from the beginning of the touch. Other columns are not read.
/// </summary>
public static class SeriesCsv
{
    private const string TimeColumn = "time_s";
    private const string TemperatureColumn = "temperature_c";
    private const int MostProblems = 20;

    /// <summary>Reads a series.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Name for messages.</param>
    /// <returns>The samples as they stand.</returns>
    /// <exception cref="DataFileException">Something is not in order; the first problems are listed with line and column.</exception>
    public static TemperatureHistory Read(string text, string file)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<(int Line, List<string> Cells)> lines = CsvCells.Read(text, file);
        List<string> header = lines.Count > 0 ? [.. lines[0].Cells.Select(c => c.Trim())] : [];
        int timeAt = header.IndexOf(TimeColumn);
        int temperatureAt = header.IndexOf(TemperatureColumn);
        if (timeAt < 0 || temperatureAt < 0 || lines.Count < 2)
        {
            throw new DataFileException([new DataFileProblem(
                file, 1, string.Empty, $"must have a row of column names with {TimeColumn} and {TemperatureColumn}, and at least one sample")]);
        }

        List<DataFileProblem> problems = [];
        List<double> seconds = [];
        List<double> celsius = [];
        foreach ((int line, List<string> cells) in lines.Skip(1))
        {
            double time = Number(file, line, TimeColumn, cells, timeAt, problems);
            double temperature = Number(file, line, TemperatureColumn, cells, temperatureAt, problems);
            if (time < 0 || (seconds.Count > 0 && time <= seconds[^1]))
            {
                problems.Add(new DataFileProblem(file, line, TimeColumn, "must be zero or more and rise from row to row"));
            }

            if (temperature is <= -273.15 or > 2000)
            {
                problems.Add(new DataFileProblem(file, line, TemperatureColumn, "must lie between absolute zero and 2000 °C"));
            }

            seconds.Add(time);
            celsius.Add(temperature);
            if (problems.Count >= MostProblems)
            {
                break;
            }
        }

        return problems.Count == 0
            ? new TemperatureHistory([.. seconds], [.. celsius])
            : throw new DataFileException(problems);
    }

    private static double Number(string file, int line, string column, List<string> cells, int at, List<DataFileProblem> problems)
    {
        string cell = at < cells.Count ? cells[at].Trim() : string.Empty;
        if (double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number))
        {
            return number;
        }

        problems.Add(new DataFileProblem(file, line, column, $"must be a number with a decimal point; got '{BadValue.Shown(cell)}'"));
        return double.NaN;
    }
}
