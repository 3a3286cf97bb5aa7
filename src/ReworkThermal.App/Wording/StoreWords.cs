using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Sentences about the job store.</summary>
internal static class StoreWords
{
    internal const string ImportTitle = "Import";

    internal const string Sound = "The store is sound.";

    internal const string Problems = "Problems";

    internal const string NothingToKeep = "No store was there before.";

    internal static string RestoreTitle(string path) => $"Job store {path}, restored";

    internal static string Restored(int jobs, int entries) => string.Create(CultureInfo.InvariantCulture, $"{jobs} jobs, {entries} entries, all in order.");

    internal static string KeptAs(string path) => $"The store before is kept as {path}.";

    internal static string CheckTitle(string path) => $"Job store {path}";

    internal static string Counts(int jobs, int entries, int version) => string.Create(CultureInfo.InvariantCulture, $"{jobs} jobs, {entries} entries, format version {version}.");

    internal static string Imported(int jobs, int entries, int known) => string.Create(CultureInfo.InvariantCulture, $"{jobs} new jobs, {entries} new entries; {known} entries were there already.");
}
