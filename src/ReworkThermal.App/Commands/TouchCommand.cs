using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>touch</c>: list touches, take a mistake back, drop one that never gave heat. Logging is in <see cref="TouchLogCommand"/>.</summary>
internal static class TouchCommand
{
    /// <summary>Defines <c>touch</c> and what is under it.</summary>
    internal static Command Define(Shell shell, JobOptions options) => new("touch", HelpText.Touches)
    {
        options.Job,
        new TouchLogCommand(shell, options).Define(),
        Void(shell, options),
        Drop(shell, options),
        List(shell, options),
    };

    private static Command Void(Shell shell, JobOptions options)
    {
        Argument<int> entry = EntryArgument();
        Option<string> reason = CommonOptions.Reason();
        Command command = new("void", HelpText.TouchVoid) { entry, reason };
        command.SetAction(parse => options.Record(parse, shell, _ =>
            new EventWish.Wanted(new JobEvent.EntryVoided(parse.GetValue(entry), parse.GetRequiredValue(reason)))));
        return command;
    }

    private static Command Drop(Shell shell, JobOptions options)
    {
        Argument<int> entry = EntryArgument();
        Option<string> reason = CommonOptions.Reason();
        Command command = new("drop", HelpText.TouchDrop) { entry, reason };
        command.SetAction(parse => options.Record(parse, shell, _ =>
            new EventWish.Wanted(new JobEvent.TouchDropped(parse.GetValue(entry), parse.GetRequiredValue(reason)))));
        return command;
    }

    private static Command List(Shell shell, JobOptions options)
    {
        Command command = new("list", HelpText.TouchList);
        command.SetAction(parse => options.OnJob(parse, shell, (_, picked) =>
            new Reply.Answered(new TouchListView(picked.State, picked.Notes))));
        return command;
    }

    private static Argument<int> EntryArgument() => Numbers.WholeArgument("entry", HelpText.Entry, 1, Numbers.MostEntries);
}
