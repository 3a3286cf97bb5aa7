using ReworkThermal.Data;

namespace ReworkThermal.App.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    internal string Path { get; } = Directory.CreateTempSubdirectory("rework-thermal-").FullName;

    /// <summary>A folder with a copy of the data that came with the program.</summary>
    internal static TemporaryFolder WithData()
    {
        TemporaryFolder copy = new();
        foreach ((string name, string path) in DataRoot.BesideProgram.AllFiles("alloys").Concat(DataRoot.BesideProgram.AllFiles("profiles")))
        {
            copy.Write(name, File.ReadAllText(path));
        }

        return copy;
    }

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
