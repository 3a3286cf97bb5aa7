using System.Globalization;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>Rows of a reference table: comma separated, comment lines start with #, the first other line names the columns.</summary>
internal static class DamageReference
{
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file)
    {
        string[] lines = [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "reference", file)).Where(l => l.Length > 0 && l[0] != '#')];
        string[] columns = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => columns.Zip(line.Split(',', StringSplitOptions.None)).ToDictionary(p => p.First, p => p.Second))];
    }

    internal static double Number(this IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], NumberStyles.Float, CultureInfo.InvariantCulture);
}
