using System.Text;
using ReworkThermal.App.Screens.Running;
using ReworkThermal.Data;

namespace ReworkThermal.App.Commands;

/// <summary>The streams and manners of the running process: UTF-8, and colour only on a terminal and without NO_COLOR (no-color.org).</summary>
internal sealed class ProcessShell : IDisposable
{
    /// <summary>Text width when the answer does not go to a terminal.</summary>
    private const int PlainWidth = 100;

    private const int LeastWidth = 40;

    private const int MostWidth = 120;

    private readonly StreamWriter _output;
    private readonly StreamWriter _error;
    private readonly CancellationTokenSource _breakOff = new();

    /// <summary>Takes over the standard streams and Ctrl-C.</summary>
    internal ProcessShell()
    {
        UTF8Encoding utf8 = new(encoderShouldEmitUTF8Identifier: false);
        _output = new StreamWriter(new StandardStream(1), utf8, bufferSize: 16384);
        _error = new StreamWriter(new StandardStream(2), utf8) { AutoFlush = true };
        Console.CancelKeyPress += (_, key) =>
        {
            // The first time the command stops in good order; the second time the process ends at once.
            key.Cancel = !_breakOff.IsCancellationRequested;
            _breakOff.Cancel();
        };
        bool plain = Console.IsOutputRedirected;
        DataRoot data = new(AppContext.BaseDirectory, OwnFolder.Default());
        Shell = new Shell(
            _output,
            _error,
            data,
            plain ? PlainWidth : Math.Clamp(TerminalWidth(), LeastWidth, MostWidth),
            WantsColour(plain, Environment.GetEnvironmentVariable),
            !Console.IsErrorRedirected,
            !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("REWORK_THERMAL_TRACE")),
            _breakOff.Token,
            options => TerminalUi.Run(options, data));
    }

    /// <summary>What commands see of the process.</summary>
    internal Shell Shell { get; }

    /// <summary>Whether answers may carry colour and weight.</summary>
    /// <param name="redirected">Whether the answer goes to a file or another program.</param>
    /// <param name="environment">Value of an environment variable; null when it is not set.</param>
    /// <returns>False when redirected, when NO_COLOR is not empty, or on a terminal that says it can do nothing.</returns>
    internal static bool WantsColour(bool redirected, Func<string, string?> environment) =>
        !redirected && string.IsNullOrEmpty(environment("NO_COLOR")) && environment("TERM") != "dumb";

    /// <summary>Writes out what is still buffered.</summary>
    public void Dispose()
    {
        _output.Dispose();
        _error.Dispose();
        _breakOff.Dispose();
    }

    private static int TerminalWidth()
    {
        try
        {
            return Console.WindowWidth;
        }
        catch (IOException)
        {
            return PlainWidth;
        }
    }
}
