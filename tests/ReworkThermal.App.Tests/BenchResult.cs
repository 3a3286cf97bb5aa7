using System.Text.Json;

namespace ReworkThermal.App.Tests;

/// <summary>What a command line did.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Out">What it answered.</param>
/// <param name="Error">What it complained about.</param>
internal sealed record BenchResult(int Code, string Out, string Error)
{
    /// <summary>Checks that there was no answer, but this exit code and a complaint that says all of this.</summary>
    internal void MustBeRefused(int code, params string[] said)
    {
        Assert.Equal(code, Code);
        Assert.Empty(Out);
        Assert.All(said, s => Assert.Contains(s, Error, StringComparison.Ordinal));
    }

    /// <summary>The answer read as one JSON object.</summary>
    internal JsonElement Json()
    {
        using JsonDocument document = JsonDocument.Parse(Out);
        return document.RootElement.Clone();
    }
}
