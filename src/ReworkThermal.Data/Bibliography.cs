using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data;

/// <summary>The sources of a data folder, by key, read from its <c>sources.toml</c>.</summary>
public sealed class Bibliography
{
    /// <summary>Sources that need no entry: they say that there is none.</summary>
    private static readonly string[] _unsourced = ["common practice, no source", "judgement, no source"];

    private readonly Dictionary<string, string> _citations;

    private Bibliography(Dictionary<string, string> citations) => _citations = citations;

    /// <summary>All keys with their citations.</summary>
    public IReadOnlyDictionary<string, string> Citations => _citations;

    /// <summary>Reads a bibliography.</summary>
    /// <param name="path">Path of a <c>sources.toml</c>: one table per key with a <c>citation</c>.</param>
    /// <returns>The bibliography.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    public static Bibliography Load(string path)
    {
        FieldReader root = FieldReader.Open(path);
        Dictionary<string, string> citations = new(StringComparer.Ordinal);
        foreach (string key in root.Names.ToList())
        {
            citations[key] = root.Table(key).Text("citation");
        }

        root.Finish();
        return new Bibliography(citations);
    }

    /// <summary>This bibliography with the entries of another; where both have a key, the other's counts.</summary>
    /// <param name="other">The other.</param>
    /// <returns>Both together.</returns>
    public Bibliography With(Bibliography other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Dictionary<string, string> both = new(_citations, StringComparer.Ordinal);
        foreach ((string key, string citation) in other._citations)
        {
            both[key] = citation;
        }

        return new Bibliography(both);
    }

    /// <summary>Full citation of a source as a data file names it.</summary>
    /// <param name="source">A key, or one of the phrases for "no source".</param>
    /// <returns>The citation, or null when the key is unknown.</returns>
    public string? Cite(string source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return _unsourced.Contains(source, StringComparer.Ordinal) ? source : _citations.GetValueOrDefault(source);
    }
}
