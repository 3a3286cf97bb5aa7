namespace ReworkThermal.Core.Tests;

/// <summary>Rows of a comma-separated reference table; lines starting with # are its explanation.</summary>
internal sealed class ReferenceTable
{
    private ReferenceTable(IReadOnlyList<IReadOnlyDictionary<string, string>> rows) => Rows = rows;

    public IReadOnlyList<IReadOnlyDictionary<string, string>> Rows { get; }

    public static ReferenceTable Read(string fileName)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "reference", fileName);
        string[] lines = [.. File.ReadLines(path).Where(l => l.Length > 0 && l[0] != '#')];
        string[] names = lines[0].Split(',');
        return new ReferenceTable([.. lines.Skip(1).Select(line => Row(names, line, fileName))]);
    }

    private static Dictionary<string, string> Row(string[] names, string line, string fileName)
    {
        string[] cells = line.Split(',');
        return cells.Length == names.Length
            ? names.Zip(cells).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal)
            : throw new InvalidDataException($"{fileName}: '{line}' has {cells.Length} cells, expected {names.Length}");
    }
}
