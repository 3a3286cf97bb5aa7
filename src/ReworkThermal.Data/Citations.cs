using ReworkThermal.Data.Checks;

namespace ReworkThermal.Data;

/// <summary>Full citations of the sources that data files name.</summary>
public static class Citations
{
    /// <summary>
    /// Citations of files of one data folder, each once, in the order in which they are met. Phrases that say that there is no source
    /// are left out.
    /// </summary>
    /// <param name="paths">Paths of data files.</param>
    /// <param name="bibliography">Bibliography of their folder.</param>
    /// <returns>Full citations.</returns>
    /// <exception cref="DataFileException">A file cannot be read.</exception>
    public static IReadOnlyList<string> Of(IEnumerable<string> paths, Bibliography bibliography)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(bibliography);
        return [.. paths
            .SelectMany(path => SourceKeys.In(path, path))
            .Where(s => bibliography.Citations.ContainsKey(s.Source))
            .Select(s => bibliography.Citations[s.Source])
            .Distinct(StringComparer.Ordinal)];
    }
}
