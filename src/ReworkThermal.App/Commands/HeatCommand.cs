using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Reports;
using ReworkThermal.Data.Cases;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>heat CASE.toml</c>.</summary>
internal static class HeatCommand
{
    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Argument<string> path = FilePaths.Argument("case", HelpText.Case);
        Option<string?> csv = OutputFiles.CsvOption();
        Option<string?> plot = OutputFiles.PlotOption();
        Command command = new("heat", HelpText.Heat) { path, csv, plot };
        command.SetAction(parse => Front.Show(
            Answer(shell, parse.GetRequiredValue(path), parse.GetValue(csv), parse.GetValue(plot)),
            parse.GetValue(json),
            shell));
        return command;
    }

    private static Reply Answer(Shell shell, string path, string? csv, string? plot) =>
        HeatCaseFile.Read(path, () => Workshop.Load(shell.Data)) switch
        {
            HeatCase.Posed posed => Run(path, posed, () => HeatSolver.Solve(posed.Problem, posed.Settings, shell.Cancellation), [], [], csv, plot),
            HeatCase.AtJoint joint => AtJoint(shell, path, joint, csv, plot),
            _ => throw new InvalidOperationException("unknown kind of case"),
        };

    private static Reply AtJoint(Shell shell, string path, HeatCase.AtJoint joint, string? csv, string? plot)
    {
        MeltingShelf shelf = new(shell.Data);
        switch (shelf.Engine.MeltingOf(joint.Mix))
        {
            case MeltingOutcome.Found found:
                MeltingBehaviour melting = found.Behaviour;
                JointProblem problem = joint.With(new SolderHeat(shelf.Alloys.Properties).CurveOf(melting, joint.MassFactor), melting.Flow);
                return Run(
                    path,
                    joint,
                    () => HeatSolver.Solve(problem, joint.Settings, shell.Cancellation),
                    [.. joint.Notes, .. melting.Caveats],
                    shelf.SourcesFor(joint.Mix),
                    csv,
                    plot);
            case MeltingOutcome.NotConverged failed:
                return new Reply.AnsweredNo(new FailureView(joint.Title, failed.Reason));
            case { Lack: { } reason }:
                return new Reply.Unusable(Refusals.InFile(path, reason));
            default:
                throw new InvalidOperationException("unknown kind of melting outcome");
        }
    }

    private static Reply Run(
        string path,
        HeatCase heatCase,
        Func<HeatOutcome> solve,
        IReadOnlyList<string> notes,
        IReadOnlyList<string> sources,
        string? csv,
        string? plot)
    {
        HeatOutcome outcome;
        try
        {
            outcome = solve();
        }
        catch (ArgumentException impossible)
        {
            return new Reply.Unusable(Refusals.InFile(path, impossible.Message));
        }

        switch (outcome)
        {
            case HeatOutcome.NotConverged failed:
                return new Reply.AnsweredNo(new FailureView(heatCase.Title, failed.Reason));
            case HeatOutcome.Completed completed:
                HeatView view = new(HeatReporting.Of(heatCase.Title, completed.Run, notes, sources));
                return (OutputFiles.WriteCsv(csv, view.ToCsv) ?? OutputFiles.WritePlot(plot, view.ToChart)) is { } complaint
                    ? new Reply.Misused(complaint)
                    : new Reply.Answered(view);
            default:
                throw new InvalidOperationException("unknown kind of heat outcome");
        }
    }
}
