using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Reports.Heating;
using ReworkThermal.Data.Cases;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>heat CASE.toml</c>.</summary>
internal static class HeatCommand
{
    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, JobOptions options)
    {
        Argument<string> path = FilePaths.Argument("case", HelpText.Case);
        FigureFiles figures = new(options);
        Command command = new("heat", HelpText.Heat) { path };
        figures.AddTo(command);
        command.SetAction(parse => Front.Show(
            Answer(
                shell,
                parse.GetRequiredValue(path),
                view => figures.Write(parse, shell, [parse.GetRequiredValue(path)], view.ToCsv, view.ToChart)),
            parse.GetValue(options.Json),
            shell));
        return command;
    }

    private static Reply Answer(Shell shell, string path, Func<HeatView, string?> write) =>
        HeatCaseFile.Read(path, () => Workshop.Load(shell.Data)) switch
        {
            HeatCase.Posed posed => Run(path, posed, HeatSolver.Solve(posed.Problem, posed.Settings, shell.Cancellation), [], [], write),
            HeatCase.AtJoint joint => AtJoint(shell, path, joint, write),
            _ => throw new InvalidOperationException("unknown kind of case"),
        };

    private static Reply AtJoint(Shell shell, string path, HeatCase.AtJoint joint, Func<HeatView, string?> write)
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
                    HeatSolver.Solve(problem, joint.Settings, shell.Cancellation),
                    [.. joint.Notes, .. melting.Caveats],
                    shelf.SourcesFor(joint.Mix),
                    write);
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
        HeatOutcome outcome,
        IReadOnlyList<string> notes,
        IReadOnlyList<string> sources,
        Func<HeatView, string?> write)
    {
        switch (outcome)
        {
            case HeatOutcome.Impossible impossible:
                return new Reply.Unusable(Refusals.InFile(path, impossible.Rule));
            case HeatOutcome.NotConverged failed:
                return new Reply.AnsweredNo(new FailureView(heatCase.Title, failed.Reason));
            case HeatOutcome.Completed completed:
                HeatView view = new(HeatReporting.Of(heatCase.Title, completed.Run, notes, sources));
                return write(view) is { } complaint
                    ? new Reply.Misused(complaint)
                    : new Reply.Answered(view);
            default:
                throw new InvalidOperationException("unknown kind of heat outcome");
        }
    }
}
