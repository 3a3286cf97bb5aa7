namespace ReworkThermal.Data;

/// <summary>Writes the files that the program keeps for itself, whole or not at all: beside their place first, then moved there. Files that a user names go through <see cref="OutputFiles"/>.</summary>
internal static class WholeFile
{
    /// <summary>Writes a file.</summary>
    /// <param name="path">Where it shall be.</param>
    /// <param name="overwrite">Whether a file that is there may be replaced.</param>
    /// <param name="write">Writes the content to the path it is given, where no file is yet.</param>
    /// <exception cref="IOException">The target exists and may not be replaced, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    internal static void Write(string path, bool overwrite, Action<string> write)
    {
        string beside = path + "." + Path.GetRandomFileName() + ".tmp";
        try
        {
            write(beside);
            using (FileStream written = new(beside, FileMode.Open, FileAccess.ReadWrite))
            {
                written.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite);
        }
        finally
        {
            if (File.Exists(beside))
            {
                File.Delete(beside);
            }
        }
    }
}
