using ReworkThermal.Data;

namespace ReworkThermal.App.Wording;

/// <summary>How answers mark data of the user's own folder.</summary>
internal static class OwnDataWords
{
    internal const string Title = "Your own data in force";

    /// <summary>For a record that is handed over: without the folder, which may bear a person's name.</summary>
    internal static IEnumerable<string> ForRecord(IReadOnlyList<OwnFile> files) =>
        files.Select(f => f.StandsIn ? $"The shop's own {f.Name} stands in for the program's." : $"The shop's own {f.Name} is added to the program's data.");

    internal static IReadOnlyList<string> Sentences(IReadOnlyList<OwnFile> files) =>
        [.. files.Select(f => f.StandsIn ? $"{f.Path} (yours) stands in for the shipped file" : $"{f.Path} (yours) is added")];
}
