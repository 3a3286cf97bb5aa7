using System.CommandLine;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>All commands of the program.</summary>
internal static class CommandTree
{
    /// <summary>Name of the program on the command line.</summary>
    internal const string ProgramName = "rework-thermal";

    /// <summary>Builds the command line.</summary>
    /// <param name="shell">Streams, data and manners, handed to every command.</param>
    /// <returns>The root command.</returns>
    internal static RootCommand Build(Shell shell)
    {
        Option<bool> json = new("--json") { Description = HelpText.Json, Recursive = true };
        JobOptions options = JobOptions.Make(json);
        RootCommand root = new(HelpText.Program) { json, options.Store };
        root.Directives.Clear();
        ScreensCommand.Attach(root, shell, options.Store);
        root.Add(MeltCommand.Define(shell, options));
        root.Add(DiluteCommand.Define(shell, json));
        root.Add(CleanCommand.Define(shell, json));
        root.Add(HeatCommand.Define(shell, options));
        root.Add(PlanCommand.Define(shell, json));
        root.Add(CalibrateCommand.Define(shell, json));
        root.Add(TriageCommand.Define(shell, json));
        root.Add(JobCommand.Define(shell, options));
        root.Add(TouchCommand.Define(shell, options));
        root.Add(BudgetCommand.Define(shell, options));
        root.Add(ChecksCommand.Define(shell, options));
        root.Add(WireCommand.Define(shell, options));
        root.Add(ReportCommand.Define(shell, options));
        root.Add(StoreCommand.Define(shell, options));
        root.Add(DataCommand.Define(shell, json));
        root.Add(VerifyCommand.Define(shell, json));
        return root;
    }
}
