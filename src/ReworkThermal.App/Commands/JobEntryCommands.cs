using System.CommandLine;
using System.Globalization;
using System.Text;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Planning;
using ReworkThermal.Data;
using ReworkThermal.Data.Pinouts;

namespace ReworkThermal.App.Commands;

/// <summary>What can be entered in a job beside touches: pins, pads, looks, assumptions, notes, an accepted plan.</summary>
internal static class JobEntryCommands
{
    /// <summary>Adds the commands to <c>job</c>.</summary>
    internal static void AddTo(Command job, Shell shell, JobOptions options)
    {
        job.Add(Pins(shell, options));
        job.Add(Pad(shell, options));
        job.Add(Look(shell, options));
        job.Add(Prior(shell, options));
        job.Add(Note(shell, options));
        job.Add(Accept(shell, options));
    }

    private static Command Pins(Shell shell, JobOptions options)
    {
        Option<string?> pinout = new("--pinout") { Description = HelpText.Pinout, HelpName = "name" };
        Option<string?> from = FilePaths.Option("--from", HelpText.PinsFrom);
        Option<string?> to = FilePaths.Option("--to", HelpText.PinsTo);
        Option<bool> force = CommonOptions.Force();
        Command command = new("pins", HelpText.JobPins) { pinout, from, to, force };
        command.SetAction(parse => options.OnJob(parse, shell, (access, picked) =>
            (parse.GetValue(pinout), parse.GetValue(from), parse.GetValue(to)) switch
            {
                ({ } name, null, null) => FromPinout(shell, access, picked, name),
                (null, { } file, null) => access.RecordAll(picked, PinRow.Events(PinCsv.Read(InputFile.ReadText(file, InputFile.MostPins), file))),
                (null, null, { } file) => Write(picked.State, file, Outputs.Of(shell.Data, parse.GetValue(options.Store)), parse.GetValue(force)),
                _ => new Reply.Misused(JobWords.OnePinSource),
            }));
        return command;
    }

    private static Reply FromPinout(Shell shell, JobAccess access, JobPick.Picked picked, string name)
    {
        List<string> known = [.. shell.Data.Files("profiles/pinouts").Select(f => Path.GetFileNameWithoutExtension(f))];
        return known.Contains(name, StringComparer.Ordinal)
            ? access.RecordAll(picked, [new JobEvent.PinsRegistered(PinoutFile.Load(shell.Data.File($"profiles/pinouts/{name}.toml")).Register.Pins)])
            : new Reply.Misused(JobWords.UnknownProfile("pin-out", name, known));
    }

    private static Reply Write(JobState state, string path, OutputFiles outputs, bool force) =>
        outputs.WriteAll(Outputs.Contents([(path, Encoding.UTF8.GetBytes(PinCsv.Write(PinRow.Of(state))))]), force) is { } complaint
            ? new Reply.Misused(complaint)
            : new Reply.Answered(new WrittenView(path));

    private static Command Pad(Shell shell, JobOptions options)
    {
        Option<string?> pad = PadNames.Option(HelpText.Pad, isRequired: true);
        Argument<string> description = new("description") { Description = HelpText.PadDescription };
        Option<string?> joint = new("--joint") { Description = HelpText.PadJoint, HelpName = "name" };
        Command command = new("pad", HelpText.JobPad) { description, pad, joint };
        command.SetAction(parse => options.Record(parse, shell, state =>
            BriefOptions.Fault(state.Brief with { Joint = parse.GetValue(joint) }, shell) is { } fault
                ? new EventWish.Refused(fault)
                : OnePad(parse, pad, id => new JobEvent.PadRegistered(id, parse.GetRequiredValue(description), parse.GetValue(joint)))));
        return command;
    }

    private static Command Look(Shell shell, JobOptions options)
    {
        Option<string?> pads = PadNames.Option(HelpText.Pads, isRequired: true);
        Argument<PadState> seen = Choice.Argument<PadState>("state", HelpText.PadStateWord);
        Option<string?> note = CommonOptions.Note();
        Command command = new("look", HelpText.JobLook) { seen, pads, note };
        command.SetAction(parse => options.OnJob(parse, shell, (access, picked) => PadNames.Read(parse.GetValue(pads), out IReadOnlyList<PadId> named) is { } fault
            ? new Reply.Misused(fault)
            : access.RecordAll(picked, [.. named.Select(pad => new JobEvent.PadStateSeen(pad, parse.GetValue(seen), parse.GetValue(note)))])));
        return command;
    }

    private static Command Prior(Shell shell, JobOptions options)
    {
        Argument<PriorCondition> heat = Choice.Argument<PriorCondition>("heat", HelpText.PriorWord);
        Option<string?> pads = PadNames.Option(HelpText.Pads);
        Option<string?> note = CommonOptions.Note();
        Command command = new("prior", HelpText.JobPrior) { heat, pads, note };
        command.SetAction(parse => options.Record(parse, shell, _ => PadNames.Read(parse.GetValue(pads), out IReadOnlyList<PadId> named) is { } fault
            ? new EventWish.Refused(fault)
            : new EventWish.Wanted(new JobEvent.PriorHeatStated(named, parse.GetValue(heat), parse.GetValue(note)))));
        return command;
    }

    private static Command Note(Shell shell, JobOptions options)
    {
        Argument<string> text = new("text") { Description = HelpText.NoteText };
        Option<string?> pad = PadNames.Option(HelpText.Pad);
        Command command = new("note", HelpText.JobNote) { text, pad };
        command.SetAction(parse => options.Record(parse, shell, _ => parse.GetValue(pad) is null
            ? new EventWish.Wanted(new JobEvent.NoteTaken(parse.GetRequiredValue(text), null))
            : OnePad(parse, pad, id => new JobEvent.NoteTaken(parse.GetRequiredValue(text), id))));
        return command;
    }

    private static Command Accept(Shell shell, JobOptions options)
    {
        Argument<string> request = FilePaths.Request();
        Option<int?> number = Numbers.WholeOption("--number", HelpText.PlanNumber, 1, 99);
        Option<string?> pad = new("--pad") { Description = HelpText.AcceptPad, HelpName = "pad" };
        Option<string?> folder = CalibrateCommand.FolderOption();
        Command command = new("accept", HelpText.JobAccept) { request, number, pad, folder };
        command.SetAction(parse => options.OnJob(parse, shell, (access, picked) =>
        {
            PosedPlan posed = PosedPlan.Read(shell, parse.GetRequiredValue(request), CalibrateCommand.FolderOf(parse.GetValue(folder)));
            if (posed is PosedPlan.Ready whole && parse.GetValue(pad) is { } one)
            {
                string job = picked.State.Brief.Label;
                posed = PosedPlan.WithPad(whole, job, one, wanted => JobPads.Judge(shell, picked, job, wanted));
            }

            return posed switch
            {
                PosedPlan.Ready ready => AcceptOne(shell, access, picked, ready, parse.GetValue(number) ?? 1),
                PosedPlan.Refused refused => refused.Reply,
                _ => throw new InvalidOperationException("unknown kind of posed plan"),
            };
        }));
        return command;
    }

    private static Reply AcceptOne(Shell shell, JobAccess access, JobPick.Picked picked, PosedPlan.Ready ready, int number)
    {
        MeltingShelf shelf = new(shell.Data);
        PlanOutcome outcome = new PlanSearch(shelf.Engine, shelf.Alloys.Properties, ready.Workshop.Limits).Search(ready.Request, null, shell.Cancellation);
        return outcome switch
        {
            PlanOutcome.Planned planned when number <= planned.Plans.Count => access.Record(picked, new JobEvent.PlanAccepted(Accepted(planned.Plans[number - 1]))),
            PlanOutcome.Planned planned => new Reply.Misused(JobWords.PlanNumber(planned.Plans.Count)),
            PlanOutcome.NoPlan none => new Reply.AnsweredNo(new FailureView(ready.Request.Title, PlanWords.NoPlan(none.Reason))),
            PlanOutcome.Failed failed => new Reply.AnsweredNo(new FailureView(ready.Request.Title, PlanWords.NoPlan(failed.Reason))),
            _ => throw new InvalidOperationException("unknown kind of plan outcome"),
        };
    }

    private static AcceptedPlan Accepted(Plan plan) => new(
        plan.Alloy?.Name,
        plan.Alloy is null ? null : plan.Added,
        plan.First.Setting.Iron is null ? null : plan.First.Setting.Set,
        plan.First.Setting.Preheat?.Board,
        plan.First.Setting.Assist?.Set ?? (plan.First.Setting.Air is null ? null : plan.First.Setting.Set),
        (plan.First.Setting.Assist?.Air ?? plan.First.Setting.Air)?.Flow,
        plan.First.Dwell,
        plan.First.Stop,
        plan.Passes,
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(plan.Alloy is null ? "nothing added" : $"{plan.Added.Milligrams:0.#} mg {plan.Alloy.Name}")}, {plan.First.Setting.OnTheJoint}, {(plan.First.Setting.Preheat is { } heat ? $"board {heat.Board.DegreesCelsius:0} °C" : "no preheat")}, hold {plan.First.Dwell.Seconds:0.#} s, stop at {plan.First.Stop.Seconds:0.#} s, {plan.Passes} passes"));

    private static EventWish OnePad(ParseResult parse, Option<string?> option, Func<PadId, JobEvent> make) =>
        PadNames.Read(parse.GetValue(option), out IReadOnlyList<PadId> named) is { } fault ? new EventWish.Refused(fault)
        : named.Count == 1 ? new EventWish.Wanted(make(named[0]))
        : new EventWish.Refused(JobWords.JustOnePad);
}
