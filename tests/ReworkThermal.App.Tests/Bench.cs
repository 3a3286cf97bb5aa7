using ReworkThermal.App.Commands;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests;

/// <summary>Runs command lines inside the test process and catches what they print.</summary>
internal static class Bench
{
    /// <summary>A request that came with the program.</summary>
    internal static string DemoRequest => Path.Combine(DataRoot.BesideProgram.Profiles, "requests", "pump-controller-jack.toml");

    /// <summary>Runs a command line with the data that came with the program.</summary>
    internal static BenchResult Run(params string[] words) => Run(DataRoot.BesideProgram, words);

    /// <summary>Runs a command line with other data.</summary>
    internal static BenchResult Run(DataRoot data, params string[] words) => Run(data, useColour: false, words);

    /// <summary>Runs a command line with other data and manners.</summary>
    internal static BenchResult Run(DataRoot data, bool useColour, params string[] words)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter error = new() { NewLine = "\n" };
        Shell shell = new(output, error, data, Width: 100, useColour, ShowsProgress: false, ShowsTrace: false, CancellationToken.None);
        int code = Front.Run(words, shell);
        return new BenchResult(code, output.ToString(), error.ToString());
    }
}
