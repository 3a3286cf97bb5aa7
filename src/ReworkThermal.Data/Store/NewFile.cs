using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Writes a file whole or not at all: beside its place first, then moved there.</summary>
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

        string beside = path + "." + Path.GetRandomFileName() + ".tmp";
        try
        {
            write(beside);
            using (FileStream written = new(beside, FileMode.Open, FileAccess.ReadWrite))
            {
                written.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: force);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw !force && File.Exists(path)
                ? Exists(path, problem)
                : new JobStoreException(StoreTrouble.NotWritable, $"The file {path} cannot be written: {problem.Message}", problem);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static JobStoreException Exists(string path, Exception? cause) =>
        new(StoreTrouble.TargetExists, $"The file {path} exists already and was left as it is. Choose another name, or use --force to replace it.", cause);
}
