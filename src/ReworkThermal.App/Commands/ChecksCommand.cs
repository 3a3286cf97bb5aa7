using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Data.Pinouts;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>checks</c>: the guided list of electrical checks.</summary>
internal static class ChecksCommand
{
    /// <summary>Defines <c>checks</c> and what is under it.</summary>
    internal static Command Define(Shell shell, JobOptions options) => new("checks", HelpText.Checks)
    {
        options.Job,
        List(shell, options),
        Next(shell, options),
        Result("pass", HelpText.ChecksPass, CheckResult.Pass, shell, options),
        Result("fail", HelpText.ChecksFail, CheckResult.Fail, shell, options),
        Read(shell, options),
    };

    private static Command List(Shell shell, JobOptions options)
    {
        Command command = new("list", HelpText.ChecksList);
        command.SetAction(parse => options.OnJob(parse, shell, (_, picked) =>
        {
            ChecksView view = new(picked.State, Limits(shell), picked.Notes);
            return picked.State.Checks.Failed > 0 ? new Reply.AnsweredNo(view) : new Reply.Answered(view);
        }));
        return command;
    }

    private static Command Next(Shell shell, JobOptions options)
    {
        Command command = new("next", HelpText.ChecksNext);
        command.SetAction(parse => options.OnJob(parse, shell, (_, picked) =>
            new Reply.Answered(new NextCheckView(picked.State, Limits(shell), picked.Notes))));
        return command;
    }

    private static Command Result(string name, string description, CheckResult result, Shell shell, JobOptions options)
    {
        ProbeOptions probe = new();
        Command command = new(name, description);
        probe.AddTo(command);
        command.SetAction(parse => options.OnJob(parse, shell, (access, picked) =>
            RecordAll(access, picked, probe, parse, (line, reading) => new JobEvent.CheckDone(line.Check, result, reading, probe.Note(parse)))));
        return command;
    }

    private static Command Read(Shell shell, JobOptions options)
    {
        ProbeOptions probe = new();
        Command command = new("read", HelpText.ChecksRead);
        probe.AddTo(command);
        command.SetAction(parse => options.OnJob(parse, shell, (access, picked) => probe.Reading(parse) is null
            ? new Reply.Misused(ChecksWords.ReadingNeeded)
            : RecordAll(access, picked, probe, parse, (line, reading) =>
                new JobEvent.CheckDone(line.Check, Limits(shell).Suggest(line.Expected, reading!), reading, probe.Note(parse)))));
        return command;
    }

    private static Reply RecordAll(
        JobAccess access,
        JobPick.Picked picked,
        ProbeOptions probe,
        ParseResult parse,
        Func<CheckLine, MeterReading?, JobEvent> make)
    {
        if (probe.Lines(parse, picked.State.Checks, out IReadOnlyList<CheckLine> lines) is { } fault)
        {
            return new Reply.Misused(fault);
        }

        return access.RecordAll(picked, [.. lines.Select(line => make(line, probe.Reading(parse)))]);
    }

    private static CheckLimits Limits(Shell shell) => CheckLimitsFile.Load(shell.Data.File("profiles/limits/electrical-checks.toml"));
}
