using System.Globalization;
using System.Reflection;
using System.Text;
using ReworkThermal.Core.Verification;

namespace ReworkThermal.Data.Reference;

/// <summary>
/// The published figures that travel inside the program: comma-separated tables (RFC 4180), lines that begin with # explain, the first
/// other line names the columns.
/// </summary>
public static class ReferenceLibrary
{
    private const string Prefix = "reference/";

    /// <summary>Reads all tables that the checks use.</summary>
    /// <returns>The tables.</returns>
    /// <exception cref="FormatException">A shipped table is not in order, which is a fault of the program.</exception>
    public static ReferenceTables Load() => new(
        Rows("melting.csv"),
        Rows("melting-mixes.csv"),
        Rows("solder-density.csv"),
        Rows("thermal.csv"),
        Rows("joint-three-dimensional.csv"),
        Rows("practice.csv"),
        Rows("damage-time-to-delamination.csv"),
        Rows("damage-worked-cases.csv"),
        Rows("damage-copper-solubility.csv"),
        Rows("damage-copper-rates.csv"),
        Rows("damage-growth.csv"),
        Rows("damage-barrel.csv"),
        Rows("wire-gauges.csv"));

    /// <summary>Reads one table.</summary>
    /// <param name="table">Its file name.</param>
    /// <returns>Its rows, with their lines in the file.</returns>
    /// <exception cref="FormatException">There is no such table, or it is not in order.</exception>
    public static IReadOnlyList<ReferenceRow> Rows(string table)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + table)
            ?? throw new FormatException($"there is no reference table '{table}'");
        using StreamReader reader = new(stream, Encoding.UTF8);
        List<(int Line, List<string> Cells)> lines = CsvCells.Split(Blanked(reader.ReadToEnd()));
        List<string> header = lines[0].Cells;
        return [.. lines.Skip(1).Select(l => l.Cells.Count == header.Count
            ? new ReferenceRow(table, l.Line, header.Zip(l.Cells).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal))
            : throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"{table}, line {l.Line}: {l.Cells.Count} cells, not {header.Count}")))];
    }

    // Explanations become empty lines, so that the numbers of the other lines stay true.
    private static string Blanked(string text) =>
        string.Join('\n', text.Split('\n').Select(l => l.StartsWith('#') ? string.Empty : l));
}
