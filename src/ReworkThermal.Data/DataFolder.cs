namespace ReworkThermal.Data;

/// <summary>Lists the data files of a folder.</summary>
internal static class DataFolder
{
    /// <summary>Paths of the TOML files of a folder, in ordinal name order so that every machine reads them alike.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>Full paths.</returns>
    /// <exception cref="DataFileException">There is no such folder.</exception>
    internal static IReadOnlyList<string> Files(string folder)
    {
        return Directory.Exists(folder)
            ? [.. Directory.EnumerateFiles(folder, "*.toml").Order(StringComparer.Ordinal)]
            : throw new DataFileException([new DataFileProblem(folder, 0, string.Empty, "there is no such folder")]);
    }
}
