namespace ReworkThermal.App.Tests;

/// <summary>
/// Compares text with a stored file. A snapshot only says "it has not changed"; it proves nothing about the world. To accept a
/// change, run the tests with REWORK_THERMAL_SNAPSHOTS set to the folder tests/ReworkThermal.App.Tests/Snapshots and read the diff.
/// </summary>
internal static class Snapshot
{
    internal static void Matches(string fileName, string actual)
    {
        string? accepting = Environment.GetEnvironmentVariable("REWORK_THERMAL_SNAPSHOTS");
        if (!string.IsNullOrEmpty(accepting))
        {
            File.WriteAllText(Path.Combine(accepting, fileName), actual);
        }

        string stored = Path.Combine(AppContext.BaseDirectory, "Snapshots", fileName);
        string path = string.IsNullOrEmpty(accepting) ? stored : Path.Combine(accepting, fileName);
        Assert.True(File.Exists(path), $"there is no snapshot {fileName}");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }
}
