using System.Text.Json;

namespace ReworkThermal.App.Tests;

/// <summary>Command lines against a job store of their own, gone after the test.</summary>
internal sealed class JobStoreBench : IDisposable
{
    internal TemporaryFolder Folder { get; } = new();

    internal string Store => Path.Combine(Folder.Path, "jobs.db");

    /// <summary>Runs a command line against the store.</summary>
    internal BenchResult Run(params string[] words) => Bench.Run([.. words, "--store", Store]);

    /// <summary>Runs a command line that must succeed.</summary>
    internal BenchResult Must(params string[] words)
    {
        BenchResult result = Run(words);
        Assert.True(result.Code == 0, $"{string.Join(' ', words)}: {result.Code}\n{result.Error}{result.Out}");
        return result;
    }

    /// <summary>Runs a command line that must succeed, and reads its answer.</summary>
    internal JsonElement Json(params string[] words) => Must([.. words, "--json"]).Json();

    /// <summary>Opens a job of the demo joint with its sixteen pins and two tabs.</summary>
    internal JobStoreBench WithDemoJob(string label = "bench job")
    {
        Must("job", "new", label, "--board", "six-layer-controller", "--joint", "jack-anchor-six-layer", "--solder", "Sn96.5Ag3Cu0.5");
        Must("job", "pins", "--pinout", "panel-jack-16");
        return this;
    }

    /// <summary>Logs a touch with a measured, steady temperature.</summary>
    internal BenchResult Touch(string pad, double celsius, double seconds, string at = "2026-03-01T09:00:00Z", params string[] more)
    {
        string series = Folder.Write("series.csv", FormattableString.Invariant($"time_s,temperature_c\n0,{celsius}\n{seconds},{celsius}\n"));
        return Must(["touch", "log", "--pad", pad, "--purpose", "other", "--iron", "medium", "--iron-set", "350", "--series", series, "--at", at, .. more]);
    }

    public void Dispose() => Folder.Dispose();
}
