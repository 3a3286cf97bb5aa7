namespace ReworkThermal.Data.Tests.Store;

/// <summary>A fresh folder that is gone after the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public TemporaryFolder() => Root = Directory.CreateTempSubdirectory("rework-store-").FullName;

    public string Root { get; }

    public string this[string name] => Path.Combine(Root, name);

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
