using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Reports;
using ReworkThermal.Core.Reports.Checks;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;
using ReworkThermal.Data.Checks;
using ReworkThermal.Data.Thermodynamics;

namespace ReworkThermal.App.Commands;

/// <summary>The commands about the data files themselves.</summary>
internal static class DataCommand
{
    /// <summary>Defines <c>data</c> and what is under it.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Command check = new("check", HelpText.DataCheck);
        check.SetAction(parse => Front.Show(Check(shell), parse.GetValue(json), shell));
        return new Command("data", HelpText.Data) { check };
    }

    private static Reply Check(Shell shell)
    {
        List<CheckLine> lines = [.. DataFolderCheck.Run(shell.Data)];
        if (!new DataCheckReport(lines).AnyBroken)
        {
            ThermodynamicDatabase database = ThermodynamicFiles.Load(shell.Data);
            lines.AddRange(InvariantLines.For(database, ThermodynamicFiles.Folder));
            lines.AddRange(FitLines.For(database, ThermodynamicFiles.Folder));
        }

        DataCheckReport report = new(lines);
        DataCheckView view = new(report);
        return report.AnyBroken ? new Reply.AnsweredBroken(view)
            : report.AllPassed ? new Reply.Answered(view)
            : new Reply.AnsweredNo(view);
    }
}
