using System.Runtime.InteropServices;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Data;
using Terminal.Gui.App;

namespace ReworkThermal.App.Screens.Running;

/// <summary>Starts the screens on the terminal and ends them in good order, whatever ends them.</summary>
internal static class TerminalUi
{
    // 128 + SIGHUP, the shells' convention for a process that its terminal left behind.
    private const int TerminalLost = 129;
    private const int MostFaults = 5;
    private static readonly TimeSpan _watch = TimeSpan.FromSeconds(2);

    /// <summary>Runs the screens until the technician leaves.</summary>
    /// <param name="options">How they are wanted.</param>
    /// <param name="data">The data folders.</param>
    /// <returns>Null when they ran, else why they could not.</returns>
    internal static string? Run(ScreenOptions options, DataRoot data)
    {
        if (Console.IsInputRedirected || Console.IsOutputRedirected || Environment.GetEnvironmentVariable("TERM") is "dumb")
        {
            return ScreenWords.NeedsTerminal;
        }

        // Said when the terminal is given back, where it stays to be read.
        if (RunHere(options, data) is { } notKept)
        {
            Console.Error.WriteLine(notKept);
        }

        return null;
    }

    /// <summary>Runs the screens on this terminal.</summary>
    /// <returns>Null, or a sentence with the text that could not be kept.</returns>
    private static string? RunHere(ScreenOptions options, DataRoot data)
    {
#pragma warning disable CA2000 // Init answers the object it was called on.
        using IApplication app = Application.Create().Init();
#pragma warning restore CA2000
        if (app.Driver is { } driver)
        {
            // The sixteen colours only: they follow the user's own settings, and the background stays the terminal's.
            driver.Force16Colors = true;
        }

        using Conductor conductor = new(
            TimeProvider.System,
            RealDesks.For(options, data),
            app.Invoke,
            new ScreenSignals(times => app.Driver?.WriteRaw(new string('\a', times)), () => Leave(app)));
        using BenchWindow window = new(app, conductor, Palette.Choose(options, Environment.GetEnvironmentVariable), options.Plain);

        // The first frame first: reading jobs and data folders would compete with it for the processor.
        window.Initialized += (_, _) => app.AddTimeout(TimeSpan.FromMilliseconds(1), () =>
        {
            conductor.Begin();
            return false;
        });

        // Whatever was confirmed is in the store already, so the end may come at any moment; what is being typed is kept as a draft.
        using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using PosixSignalRegistration hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, Stop);
        using PosixSignalRegistration quit = PosixSignalRegistration.Create(PosixSignal.SIGQUIT, Stop);
        using PosixSignalRegistration? resume = OperatingSystem.IsWindows() ? null : PosixSignalRegistration.Create(PosixSignal.SIGCONT, Resume);
        using Timer watch = new(_ => LeaveIfAlone(), null, _watch, _watch);
        int faults = 0;
        string? notKept = null;
        try
        {
            app.Run(window, fault =>
            {
                conductor.Send(new Message.Faulted(ScreenWords.Fault(fault.Message)));
                return ++faults < MostFaults;
            });
        }
        finally
        {
            notKept = conductor.Close();
        }

        return notKept;

        void Stop(PosixSignalContext context)
        {
            context.Cancel = true;
            _ = conductor.KeepDraft();
            LeaveIfAlone();
            app.Invoke(() => Leave(app));
        }

        void Resume(PosixSignalContext context)
        {
            // The runtime's own answer to this signal would set the terminal to read whole lines.
            context.Cancel = true;
            Tty.MakeRaw();
            app.Invoke(window.TakeOver);
        }

        // No loop runs without a terminal, so nothing can be asked to stop.
        void LeaveIfAlone()
        {
            if (!Tty.IsThere)
            {
                _ = conductor.KeepDraft();
                Environment.Exit(TerminalLost);
            }
        }
    }

    // A stop that is asked for while the first frame is drawn would be lost; as a timer it waits until the loop runs.
    private static void Leave(IApplication app) => app.AddTimeout(TimeSpan.FromMilliseconds(1), () =>
    {
        app.RequestStop();
        return false;
    });
}
