namespace ReworkThermal.Data.Tests;

/// <summary>A copy of the shipped data in a fresh folder, to be spoiled; gone after the test.</summary>
public sealed class ShippedCopy : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("rework-thermal-data-").FullName;

    public ShippedCopy()
    {
        foreach (string folder in (string[])[DataRoot.BesideProgram.Alloys, DataRoot.BesideProgram.Profiles])
        {
            foreach (string file in Directory.EnumerateFiles(folder, "*.toml", SearchOption.AllDirectories))
            {
                string to = Path.Combine(_root, Path.GetRelativePath(DataRoot.BesideProgram.Folder, file));
                _ = Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                File.Copy(file, to);
            }
        }
    }

    public DataRoot Data => new(_root);

    /// <summary>Full path of a file or folder.</summary>
    public string this[string name] => Path.Combine(_root, name.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>Puts another text in the first place where a text stands.</summary>
    public void Spoil(string name, string good, string bad)
    {
        string text = File.ReadAllText(this[name]);
        int at = text.IndexOf(good, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{name} no longer holds the text that this test spoils: {good}");
        File.WriteAllText(this[name], string.Concat(text.AsSpan(0, at), bad, text.AsSpan(at + good.Length)));
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);
}
