using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>job</c>: open, list, show, describe, close. Pins, looks and notes are in <see cref="JobEntryCommands"/>.</summary>
internal static class JobCommand
{
    /// <summary>Defines <c>job</c> and what is under it.</summary>
    internal static Command Define(Shell shell, JobOptions options)
    {
        Command job = new("job", HelpText.Jobs)
        {
            options.Job,
            New(shell, options),
            List(shell, options),
            Show(shell, options),
            Revise(shell, options),
            Close(shell, options),
            Reopen(shell, options),
        };
        JobEntryCommands.AddTo(job, shell, options);
        return job;
    }

    private static Command New(Shell shell, JobOptions options)
    {
        Argument<string> label = new("label") { Description = HelpText.Label };
        BriefOptions brief = new();
        Command command = new("new", HelpText.JobNew) { label };
        brief.AddTo(command);
        command.SetAction(parse => options.OnStore(parse, shell, mayCreate: true, access =>
        {
            JobBrief wanted = brief.Over(new JobBrief(parse.GetRequiredValue(label)), parse);
            return BriefOptions.Fault(wanted, shell) is { } fault
                ? new Reply.Misused(fault)
                : access.Desk.Open(wanted) switch
                {
                    RecordOutcome.Recorded recorded => new Reply.Answered(new RecordedView(recorded.Entry, recorded.State, [])),
                    RecordOutcome.Refused refused => new Reply.Misused(JobWords.NotRecorded(refused.Reason)),
                    _ => throw new InvalidOperationException("a new job was not opened"),
                };
        }));
        return command;
    }

    private static Command List(Shell shell, JobOptions options)
    {
        Command command = new("list", HelpText.JobList);
        command.SetAction(parse => options.OnStore(parse, shell, mayCreate: false, access =>
            new Reply.Answered(new JobListView(access.Store.List()))));
        return command;
    }

    private static Command Show(Shell shell, JobOptions options)
    {
        Command command = new("show", HelpText.JobShow);
        command.SetAction(parse => options.OnJob(parse, shell, (_, picked) =>
            new Reply.Answered(new JobView(picked.State, picked.Notes))));
        return command;
    }

    private static Command Revise(Shell shell, JobOptions options)
    {
        Option<string?> label = new("--label") { Description = HelpText.Label, HelpName = "text" };
        BriefOptions brief = new();
        Command command = new("revise", HelpText.JobRevise) { label };
        brief.AddTo(command);
        command.SetAction(parse => options.Record(parse, shell, state =>
        {
            JobBrief known = state.Brief with { Label = parse.GetValue(label) ?? state.Brief.Label };
            JobBrief wanted = brief.Over(known, parse);
            return wanted == state.Brief ? new EventWish.Refused(JobWords.NothingToRevise)
                : BriefOptions.Fault(wanted, shell) is { } fault ? new EventWish.Refused(fault)
                : new EventWish.Wanted(new JobEvent.BriefRevised(wanted));
        }));
        return command;
    }

    private static Command Close(Shell shell, JobOptions options)
    {
        Option<string?> note = CommonOptions.Note();
        Command command = new("close", HelpText.JobClose) { note };
        command.SetAction(parse => options.Record(parse, shell, _ => new EventWish.Wanted(new JobEvent.JobClosed(parse.GetValue(note)))));
        return command;
    }

    private static Command Reopen(Shell shell, JobOptions options)
    {
        Option<string> reason = CommonOptions.Reason();
        Command command = new("reopen", HelpText.JobReopen) { reason };
        command.SetAction(parse => options.Record(parse, shell, _ => new EventWish.Wanted(new JobEvent.JobReopened(parse.GetRequiredValue(reason)))));
        return command;
    }
}
