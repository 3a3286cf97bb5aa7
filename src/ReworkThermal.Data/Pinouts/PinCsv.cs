using System.Globalization;
using System.Text;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using UnitsNet;

namespace ReworkThermal.Data.Pinouts;

/// <summary>
/// Pins as comma-separated text for spreadsheets (RFC 4180, UTF-8). The first row names the columns; their order does not matter,
/// and all but number, name, row, position and duty may be absent or empty. Text that a spreadsheet would run is guarded.
/// </summary>
public static class PinCsv
{
    private static readonly string[] _columns = ["number", "name", "row", "position", "duty", "destination", "bond", "current_a", "pair", "state", "note"];
    private static readonly string[] _required = ["number", "name", "row", "position", "duty"];

    /// <summary>Writes pins.</summary>
    /// <param name="rows">The pins.</param>
    /// <returns>The text, lines ending in LF.</returns>
    public static string Write(IReadOnlyList<PinRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        StringBuilder text = new();
        _ = text.Append(CsvCells.Join(_columns)).Append('\n');
        foreach (PinRow row in rows)
        {
            (string duty, string destination, string bond) = row.Pin.Duty switch
            {
                PinDuty.Wired wired => ("wired", wired.Destination, string.Empty),
                PinDuty.Ground => ("ground", string.Empty, string.Empty),
                PinDuty.Shield shield => ("shield", string.Empty, shield.Bond.Word()),
                _ => ("no-connect", string.Empty, string.Empty),
            };
            _ = text.Append(CsvCells.Join(
            [
                CsvCells.Guarded(row.Pin.Number.Value),
                CsvCells.Guarded(row.Pin.Name),
                row.Pin.Row.ToString(CultureInfo.InvariantCulture),
                row.Pin.Position.ToString("R", CultureInfo.InvariantCulture),
                duty,
                CsvCells.Guarded(destination),
                bond,
                row.Pin.Current?.Amperes.ToString("R", CultureInfo.InvariantCulture) ?? string.Empty,
                CsvCells.Guarded(row.Pin.Pair ?? string.Empty),
                row.State is { } state ? state.Word() : string.Empty,
                CsvCells.Guarded(row.Note ?? string.Empty),
            ])).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Reads pins.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Name for messages.</param>
    /// <returns>The pins in file order.</returns>
    /// <exception cref="DataFileException">Something is not in order; every problem is listed with its line and column.</exception>
    public static IReadOnlyList<PinRow> Read(string text, string file)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<(int Line, List<string> Cells)> lines = CsvCells.Read(text, file);
        if (lines.Count < 2)
        {
            throw new DataFileException([new DataFileProblem(file, 1, string.Empty, $"must have a row of column names ({string.Join(", ", _columns)}) and at least one pin")]);
        }

        List<string> header = [.. lines[0].Cells.Select(c => c.Trim())];
        List<DataFileProblem> problems = [.. HeaderProblems(header, file)];
        List<PinRow> rows = [];
        if (problems.Count == 0)
        {
            foreach ((int line, List<string> cells) in lines.Skip(1))
            {
                ReadRow(header, cells, new Place(file, line, problems), rows);
            }
        }

        if (problems.Count == 0 && PinRegister.Fault([.. rows.Select(r => r.Pin)]) is { } fault)
        {
            problems.Add(new DataFileProblem(file, 0, string.Empty, fault));
        }

        return problems.Count == 0 ? rows : throw new DataFileException(problems);
    }

    private static IEnumerable<DataFileProblem> HeaderProblems(List<string> header, string file) =>
        header.Where(c => !_columns.Contains(c, StringComparer.Ordinal))
            .Select(c => new DataFileProblem(file, 1, c, $"is no column known here; known: {string.Join(", ", _columns)}"))
            .Concat(_required.Where(c => !header.Contains(c, StringComparer.Ordinal)).Select(c => new DataFileProblem(file, 1, c, "this column is missing")))
            .Concat(header.GroupBy(c => c).Where(g => g.Count() > 1).Select(g => new DataFileProblem(file, 1, g.Key, "this column stands twice")));

    private static void ReadRow(List<string> header, List<string> cells, Place place, List<PinRow> rows)
    {
        if (cells.Count != header.Count)
        {
            place.Wrong(string.Empty, string.Create(CultureInfo.InvariantCulture, $"has {cells.Count} cells, the first row has {header.Count}"));
            return;
        }

        string Cell(string column) => header.IndexOf(column) is int i and >= 0 ? cells[i].Trim() : string.Empty;
        string Text(string column) => CsvCells.Unguarded(Cell(column));
        string? CellOrNull(string column) => Cell(column) is { Length: > 0 } text ? text : null;
        int before = place.Problems.Count;
        if (PadId.Fault(Text("number")) is { } fault)
        {
            place.Wrong("number", fault);
        }

        double row = Number(place, "row", Cell("row"));
        double position = Number(place, "position", Cell("position"));
        double? current = CellOrNull("current_a") is { } amperes ? Number(place, "current_a", amperes) : null;
        PadState? state = null;
        if (CellOrNull("state") is { } word)
        {
            if (Vocabulary.Of<PadState>().TryGetValue(word, out PadState known))
            {
                state = known;
            }
            else
            {
                place.Wrong("state", $"must be one of {string.Join(", ", Vocabulary.Of<PadState>().Keys)}; got '{BadValue.Shown(word)}'");
            }
        }

        if (row != Math.Floor(row) || row is < 1 or > 1000)
        {
            place.Wrong("row", "must be a whole number from 1 to 1000");
        }

        PinDuty? duty = Duty(place, Cell);
        if (duty is not null && place.Problems.Count == before)
        {
            rows.Add(new PinRow(
                new Pin(new PadId(Text("number")), Text("name"), (int)row, position, duty, current is double a ? ElectricCurrent.FromAmperes(a) : null, CellOrNull("pair") is null ? null : Text("pair")),
                state,
                header.IndexOf("note") is int note and >= 0 && cells[note].Length > 0 ? CsvCells.Unguarded(cells[note]) : null));
        }
    }

    private static PinDuty? Duty(Place place, Func<string, string> cell)
    {
        switch (cell("duty"))
        {
            case "wired" when cell("destination").Length > 0:
                return new PinDuty.Wired(CsvCells.Unguarded(cell("destination")));
            case "wired":
                place.Wrong("destination", "a wired pin needs a destination");
                return null;
            case "ground":
                return new PinDuty.Ground();
            case "shield" when Vocabulary.Of<ShieldBond>().TryGetValue(cell("bond"), out ShieldBond bond):
                return new PinDuty.Shield(bond);
            case "shield":
                place.Wrong("bond", $"a shield pin needs a bond: {string.Join(" or ", Vocabulary.Of<ShieldBond>().Keys)}");
                return null;
            case "no-connect":
                return new PinDuty.NoConnect();
            default:
                place.Wrong("duty", $"must be one of wired, ground, shield, no-connect; got '{BadValue.Shown(cell("duty"))}'");
                return null;
        }
    }

    private static double Number(Place place, string column, string text)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number))
        {
            return number;
        }

        place.Wrong(column, $"must be a number with a decimal point; got '{BadValue.Shown(text)}'");
        return 1;
    }

    private sealed record Place(string File, int Line, List<DataFileProblem> Problems)
    {
        internal void Wrong(string column, string rule) => Problems.Add(new DataFileProblem(File, Line, column, rule));
    }
}
