namespace ReworkThermal.App.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    internal string Path { get; } = Directory.CreateTempSubdirectory("rework-thermal-").FullName;

    /// <summary>Writes a file.</summary>
    /// <param name="name">Name below the folder; folders in it are made.</param>
    /// <param name="text">Content.</param>
    /// <returns>Its full path.</returns>
    internal string Write(string name, string text)
    {
        string path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
