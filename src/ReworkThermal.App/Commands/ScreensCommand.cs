using System.CommandLine;
using ReworkThermal.App.Screens.Running;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>The program without a command: the terminal UI.</summary>
internal static class ScreensCommand
{
    /// <summary>Lets the root command start the terminal UI.</summary>
    /// <param name="root">The root command.</param>
    /// <param name="shell">Streams and manners.</param>
    /// <param name="store">The option that names the job store; the root command has it already.</param>
    internal static void Attach(RootCommand root, Shell shell, Option<string?> store)
    {
        Option<bool> plain = new("--plain") { Description = HelpText.Plain };
        Option<bool> light = new("--light") { Description = HelpText.Light };
        root.Add(plain);
        Option<string?> calibrations = CalibrateCommand.FolderOption();
        root.Add(light);
        root.Add(calibrations);
        root.SetAction(parse => Run(new ScreenOptions(parse.GetValue(plain), parse.GetValue(light), parse.GetValue(store), parse.GetValue(calibrations)), shell));
    }

    /// <summary>Runs the terminal UI, or says why it cannot.</summary>
    internal static int Run(ScreenOptions options, Shell shell) =>
        (shell.Screens ?? NoScreens)(options) is { } reason ? Front.Show(new Reply.Misused(reason), asJson: false, shell) : ExitCode.Done;

    private static string NoScreens(ScreenOptions options) => ScreenWords.NeedsTerminal;
}
