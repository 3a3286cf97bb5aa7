using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Commands;

/// <summary>Says which files of a run may not be written: its job store, the data files, and what the command reads.</summary>
internal static class Outputs
{
    /// <summary>The way to write files in this run.</summary>
    /// <param name="data">The data folders.</param>
    /// <param name="store">The job store that was named; null for the usual place.</param>
    /// <param name="inputs">Files that the command line names to be read.</param>
    internal static OutputFiles Of(DataRoot data, string? store, IEnumerable<string>? inputs = null) =>
        new([.. StoreFiles(store), .. data.AllPaths, .. inputs ?? []]);

    /// <summary>Contents that are at hand, as something that writes them.</summary>
    internal static IReadOnlyList<(string Path, Action<string> Write)> Contents(IEnumerable<(string Path, byte[] Content)> files) =>
        [.. files.Select(f => (f.Path, (Action<string>)(draft => File.WriteAllBytes(draft, f.Content))))];

    private static IReadOnlyList<string> StoreFiles(string? store)
    {
        try
        {
            return SqliteJobStore.FilesOf(store ?? StorePlace.Default());
        }
        catch (JobStoreException)
        {
            // Without a usual place there is no store of this run.
            return [];
        }
    }
}
