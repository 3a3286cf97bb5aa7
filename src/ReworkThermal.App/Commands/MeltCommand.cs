using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>melt COMPOSITION</c>.</summary>
internal static class MeltCommand
{
    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, JobOptions options)
    {
        Argument<string> composition = new("composition") { Description = HelpText.Composition };
        Option<bool> curve = new("--curve") { Description = HelpText.Curve };
        FigureFiles figures = new(options);
        Command command = new("melt", HelpText.Melt) { composition, curve };
        figures.AddTo(command);
        command.SetAction(parse => Front.Show(
            Answer(
                shell,
                parse.GetRequiredValue(composition),
                parse.GetValue(curve) || figures.AreWanted(parse),
                view => figures.Write(parse, shell, [], view.ToCsv, view.ToChart)),
            parse.GetValue(options.Json),
            shell));
        return command;
    }

    private static Reply Answer(Shell shell, string text, bool wantsCurve, Func<MeltCurveView, string?> write)
    {
        MeltingShelf shelf = new(shell.Data);
        return shelf.Alloys.Find(text) switch
        {
            DesignationReading.Accepted accepted when wantsCurve => Curve(shelf, accepted, write),
            DesignationReading.Accepted accepted => Summary(shelf, accepted),
            DesignationReading.Refused unusable => new Reply.Misused(unusable.Reason),
            _ => throw new InvalidOperationException("unknown kind of reading"),
        };
    }

    private static Reply Summary(MeltingShelf shelf, DesignationReading.Accepted solder)
    {
        MeltReporting reporting = new(shelf.Engine, shelf.Alloys.Properties);
        MeltReport melt = reporting.Melting(solder.Fractions, solder.Notes, shelf.SourcesFor(solder.Fractions));
        MeltReport report = melt.With([.. shelf.Alloys.Listed(solder.Fractions).Select(alloy => PrintedWords.Of(alloy, melt, shelf.Alloys.Sources.Cite)).Distinct(StringComparer.Ordinal)]);
        return report is MeltReport.Computed or MeltReport.SolidusOnly ? new Reply.Answered(new MeltView(report)) : new Reply.AnsweredNo(new MeltView(report));
    }

    private static Reply Curve(MeltingShelf shelf, DesignationReading.Accepted solder, Func<MeltCurveView, string?> write)
    {
        IReadOnlyList<string> sources = shelf.SourcesFor(solder.Fractions);
        if (shelf.Engine.MeltingOf(solder.Fractions) is not MeltingOutcome.Found found)
        {
            return Summary(shelf, solder);
        }

        MeltCurveView view = new(MeltReporting.Curve(found.Behaviour, solder.Notes, sources));
        return write(view) is { } complaint
            ? new Reply.Misused(complaint)
            : new Reply.Answered(view);
    }
}
