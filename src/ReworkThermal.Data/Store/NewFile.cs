using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Writes what is taken out of a store, whole or not at all, and never over a file unasked.</summary>
internal static class NewFile
{
    /// <summary>Writes a file.</summary>
    /// <param name="path">Where it shall be.</param>
    /// <param name="force">Whether a file that is there may be replaced.</param>
    /// <param name="write">Writes the content to the path it is given, where no file is yet.</param>
    /// <exception cref="JobStoreException">The target exists, or its folder cannot be written.</exception>
    internal static void Write(string path, bool force, Action<string> write)
    {
        if (!force && File.Exists(path))
        {
            throw Exists(path, null);
        }

        try
        {
            WholeFile.Write(path, force, write);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw !force && File.Exists(path)
                ? Exists(path, problem)
                : new JobStoreException(StoreTrouble.NotWritable, $"The file {path} cannot be written: {problem.Message}", problem);
        }
    }

    private static JobStoreException Exists(string path, Exception? cause) =>
        new(StoreTrouble.TargetExists, $"The file {path} exists already and was left as it is. Choose another name, or use --force to replace it.", cause);
}
