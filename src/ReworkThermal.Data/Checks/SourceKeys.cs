using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Checks;

/// <summary>Finds every source that a data file names, whatever kind of file it is.</summary>
internal static class SourceKeys
{
    /// <summary>Lists the values of all fields called <c>source</c> or <c>sources</c>, at any depth.</summary>
    /// <param name="path">Path of a TOML file.</param>
    /// <param name="shownAs">Name for messages.</param>
    /// <returns>Source and line, in file order.</returns>
    /// <exception cref="DataFileException">The file cannot be read or is not valid TOML.</exception>
    internal static IReadOnlyList<(string Source, int Line)> In(string path, string shownAs) =>
        [.. Walk(TomlTree.Parse(InputFile.ReadText(path, InputFile.MostData, shownAs), shownAs))];

    private static IEnumerable<(string Source, int Line)> Walk(TomlValue value) => value switch
    {
        TomlValue.Table table => table.Fields.SelectMany(field => field.Key is "source" or "sources" ? Named(field.Value) : Walk(field.Value)),
        TomlValue.List list => list.Items.SelectMany(Walk),
        _ => [],
    };

    private static IEnumerable<(string Source, int Line)> Named(TomlValue value) => value switch
    {
        TomlValue.Text text => [(text.Value, text.Line)],
        TomlValue.List list => list.Items.SelectMany(Named),
        _ => Walk(value),
    };
}
