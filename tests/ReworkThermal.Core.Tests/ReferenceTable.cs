using System.Globalization;
using System.Text;
using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Tests;

/// <summary>Reads the comma-separated tables of <c>tests/reference</c>; lines starting with # explain, quoted fields may hold commas.</summary>
internal static class ReferenceTable
{
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string file)
    {
        string[] lines = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", file)).Where(l => l.Length > 0 && l[0] != '#')];
        List<string> header = Split(lines[0]);
        return [.. lines.Skip(1).Select(line =>
        {
            List<string> fields = Split(line);
            return fields.Count == header.Count
                ? header.Zip(fields).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal)
                : throw new InvalidDataException($"{file}: '{line}' has {fields.Count} fields, not {header.Count}");
        })];
    }

    internal static MassFractions Composition(IReadOnlyDictionary<string, string> fields) => MassFractions.Of([.. ElementData.All
        .Select(e => (e, double.Parse(fields[e.ToString().ToLowerInvariant() + "_wt_pct"], CultureInfo.InvariantCulture)))]);

    private static List<string> Split(string line)
    {
        List<string> fields = [];
        StringBuilder field = new();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (c == '"')
            {
                if (quoted && i + 1 < line.Length && line[i + 1] == '"')
                {
                    field.Append('"');
                    i++;
                    continue;
                }

                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }
}
