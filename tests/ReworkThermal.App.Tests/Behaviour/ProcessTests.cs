using System.Diagnostics;
using System.Globalization;
using System.Text;
using ReworkThermal.App.Commands;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Tests.Behaviour;

/// <summary>The program as a process of its own: what cannot be seen from inside.</summary>
public sealed class ProcessTests
{
    [Fact]
    public void It_finds_its_data_from_any_working_directory()
    {
        using TemporaryFolder elsewhere = new();
        (int code, string output, string error) = Start(elsewhere.Path, "data", "check");
        Assert.True(code == 0, output + error);
    }

    [Fact]
    public void A_redirected_answer_is_plain_UTF8_without_a_byte_order_mark()
    {
        (int code, string output, string _) = Start(Path.GetTempPath(), "--help");
        Assert.Equal(0, code);
        Assert.DoesNotContain('\u001b', output);
        Assert.DoesNotContain('\uFEFF', output);
    }

    [Fact]
    public void A_usage_mistake_leaves_standard_output_empty()
    {
        (int code, string output, string error) = Start(Path.GetTempPath(), "no-such-command");
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.NotEmpty(error);
    }

    [Theory]
    [InlineData(false, null, "xterm", true)]
    [InlineData(false, "", "xterm", true)] // no-color.org: the variable counts when it is not an empty string
    [InlineData(false, "1", "xterm", false)]
    [InlineData(false, null, "dumb", false)]
    [InlineData(true, null, "xterm", false)]
    public void Colour_is_used_only_where_it_is_welcome(bool redirected, string? noColour, string terminal, bool expected) =>
        Assert.Equal(expected, ProcessShell.WantsColour(redirected, name => name == "NO_COLOR" ? noColour : name == "TERM" ? terminal : null));

    /// <summary>A plan takes seconds, so the signal meets it at work; the exit code is the shells' 128 + SIGINT.</summary>
    [Fact]
    public async Task A_plan_broken_off_by_the_keyboard_ends_with_130_and_says_so()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // There a process cannot send Ctrl-C to one process alone.
        }

        using Process process = Process.Start(Program(Path.GetTempPath(), "plan", Bench.DemoRequest))!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        while (!process.HasExited && process.TotalProcessorTime < TimeSpan.FromSeconds(0.7))
        {
            // Past the start, which takes less, and far from the end.
            await Task.Delay(20);
            process.Refresh();
        }

        using (Process kill = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            await kill.WaitForExitAsync();
        }

        await process.WaitForExitAsync();
        Assert.Equal((130, string.Empty), (process.ExitCode, await output));
        Assert.Contains(Refusals.BrokenOff, await error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("melt Sn63Pb37 >&-", "Bad file descriptor. No entry was recorded.")]
    [InlineData("melt Sn63Pb37 >/dev/full", "No space left on device. No entry was recorded.")]
    [InlineData("job new x --store \"$STORE\" >/dev/full", "No space left on device. Recorded as entry 1")]
    [InlineData("job new x --store \"$STORE\" | :", "Broken pipe. Recorded as entry 1")]
    [InlineData("melt Sn63Pb37 --curve | :", "")]
    [InlineData("melt Sn63Pb37 >&- 2>&-", "")]
    public async Task A_standard_output_that_cannot_be_written_ends_in_good_order(string words, string said)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using TemporaryFolder folder = new();
        string program = $"\"{Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet"}\" \"{Path.Combine(AppContext.BaseDirectory, "rework-thermal.dll")}\"";
        ProcessStartInfo start = new("bash") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["STORE"] = Path.Combine(folder.Path, "jobs.db");
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add($"{program} {words}; exit ${{PIPESTATUS[0]}}");
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        _ = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        string complaint = await error;
        Assert.Equal(74, process.ExitCode);
        Assert.DoesNotContain("   at ", complaint, StringComparison.Ordinal);
        Assert.Equal(said.Length == 0, complaint.Length == 0);
        Assert.Contains(said, complaint, StringComparison.Ordinal);
    }

    private static (int Code, string Out, string Error) Start(string directory, params string[] words)
    {
        using Process process = Process.Start(Program(directory, words))!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }

    private static ProcessStartInfo Program(string directory, params string[] words)
    {
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            WorkingDirectory = directory,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "rework-thermal.dll"));
        foreach (string word in words)
        {
            start.ArgumentList.Add(word);
        }

        return start;
    }
}
