using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Reports.Records;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>budget show</c>: all pads of a job, or one pad with what the next touch would do.</summary>
internal static class BudgetCommand
{
    private const double UsualSeconds = 3;

    /// <summary>Defines <c>budget</c> and what is under it.</summary>
    internal static Command Define(Shell shell, JobOptions options)
    {
        Option<string?> pad = PadNames.Option(HelpText.Pad);
        Option<double?> seconds = Numbers.Option("--seconds", HelpText.NextSeconds, 0.05, 60, "s");
        Option<double?> now = Numbers.Option("--now", HelpText.Now, -20, 400, "°C");
        TouchToolOptions tools = new();
        Command show = new("show", HelpText.BudgetShow) { pad, seconds, now };
        tools.AddTo(show);
        show.SetAction(parse => options.OnJob(parse, shell, (_, picked) =>
        {
            if (PadNames.Read(parse.GetValue(pad), out IReadOnlyList<PadId> named) is { } badPad)
            {
                return new Reply.Misused(badPad);
            }

            if (named.Count > 1)
            {
                return new Reply.Misused(JobWords.JustOnePad);
            }

            if (tools.Read(parse, out ToolUse use) is { } badTools)
            {
                return new Reply.Misused(badTools);
            }

            Question question = new(
                named.Count == 1 ? named[0] : null,
                use,
                parse.GetValue(seconds) is { } s ? Duration.FromSeconds(s) : null,
                parse.GetValue(now) is { } c ? Temperature.FromDegreesCelsius(c) : null);
            return question is { Pad: null } and not { Use: { Tools.Count: 0, BoardAtStart: null, Side: null }, Dwell: null, Now: null }
                ? new Reply.Misused(BudgetWords.PadNeeded)
                : Answer(shell, new JobWorkshop(shell), picked, question);
        }));
        return new Command("budget", HelpText.Budgets) { options.Job, show };
    }

    private static Reply Answer(Shell shell, JobWorkshop workshop, JobPick.Picked picked, Question question)
    {
        JobState state = picked.State;
        JobSite site = workshop.SiteOf(state.Brief);
        if (site is not JobSite.Known known)
        {
            return new Reply.Misused(((JobSite.Unknown)site).Reason);
        }

        IReadOnlyList<PadAccount> accounts = workshop.Accounts(state, known);
        IReadOnlyList<string> notes = [.. picked.Notes, .. workshop.NotesOf(state, known)];
        if (question.Pad is null)
        {
            return new Reply.Answered(new BudgetView(new BudgetReport(
                state.Id,
                state.Brief.Label,
                accounts,
                [.. notes, .. accounts.SelectMany(a => a.Notes.Select(n => BudgetWords.OfPad(a.Ledger.Pad, n)))],
                workshop.SourcesFor([]))));
        }

        if (accounts.FirstOrDefault(a => a.Ledger.Pad == question.Pad) is not { } account)
        {
            return new Reply.Misused(BudgetWords.NoSuchPad(question.Pad, state.Pads.Keys));
        }

        return new Reply.Answered(new PadView(Full(shell, workshop, state, accounts, account, question, notes)));
    }

    private static PadReport Full(
        Shell shell,
        JobWorkshop workshop,
        JobState state,
        IReadOnlyList<PadAccount> accounts,
        PadAccount account,
        Question question,
        IReadOnlyList<string> known)
    {
        List<string> notes = [.. known, .. account.Notes];
        TouchForecasting forecasting = new(workshop.Bench);

        // The part is the connector: its pins come off together. A pad of its own has only its own joint to wait for.
        IReadOnlyList<PadAccount> part = account.Ledger.Pin is null ? [account] : [.. accounts.Where(a => a.Ledger.Pin is not null)];
        Temperature now = question.Now ?? workshop.Room.Room;
        ToolUse use = question.Use;
        if (use.Tools.Count == 0 && LastTouch(account, accounts) is { } last)
        {
            use = new ToolUse(last.Tools, use.BoardAtStart ?? last.BoardAtStart, use.Side ?? last.Side);
            notes.Add(BudgetWords.SettingsOfLastTouch(EventWords.Tools(use.Tools)));
        }

        Duration dwell = question.Dwell ?? state.Plan?.What.Dwell ?? Duration.FromSeconds(UsualSeconds);
        ForecastOutcome? next = use.Tools.Count == 0 ? null : forecasting.Of(account, part, use, dwell, shell.Cancellation);
        return new PadReport(
            state.Id,
            state.Brief.Label,
            account,
            next,
            forecasting.PullNow(account, part, now),
            now,
            [.. notes, .. next is ForecastOutcome.Made made ? made.Forecast.Simulation.Warnings.Concat(made.Forecast.Simulation.Notes) : []],
            workshop.SourcesFor([account.Contents.Fractions]));
    }

    private static Exposure? LastTouch(PadAccount account, IReadOnlyList<PadAccount> accounts) =>
        (account.Ledger.Heats is [.., PadHeat last] ? last.Touch : null)
        ?? accounts.SelectMany(a => a.Ledger.Heats).OrderBy(h => h.Touch.StartedAt).ThenBy(h => h.Number).LastOrDefault()?.Touch;

    private sealed record Question(PadId? Pad, ToolUse Use, Duration? Dwell, Temperature? Now);
}
