using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Reports.Checks;
using ReworkThermal.Core.Verification;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Limits;
using ReworkThermal.Data.Reference;
using ReworkThermal.Data.Thermodynamics;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>verify</c>: every published figure that travels in the program, computed anew on this machine.</summary>
internal static class VerifyCommand
{
    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Option<bool> all = new("--all") { Description = HelpText.VerifyAll };
        Option<bool> markdown = new("--markdown") { Description = HelpText.VerifyMarkdown };
        Command command = new("verify", HelpText.Verify) { all, markdown };
        command.SetAction(parse => Front.Show(Verify(shell, parse.GetValue(all), parse.GetValue(markdown)), parse.GetValue(json), shell));
        return command;
    }

    private static Reply Verify(Shell shell, bool all, bool markdown)
    {
        AlloyShelf alloys = AlloyShelf.Load(shell.Data);
        ReferenceTables tables = ReferenceLibrary.Load();
        ThermodynamicDatabase database = ThermodynamicFiles.Load(Path.Combine(shell.Data.Alloys, "thermodynamics"));
        VerificationReport report = new(VerificationRun.Run(
            tables,
            database,
            alloys.Properties,
            LimitsFolder.Load(shell.Data),
            PracticeCases.Load(tables.Practice, new PhaseEngine(database)),
            alloys.Sources.Citations,
            shell.Cancellation));
        IRenderedReport view = markdown ? new VerificationMarkdown(report) : new VerificationView(report, all);
        return report.AllMet ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
    }
}
