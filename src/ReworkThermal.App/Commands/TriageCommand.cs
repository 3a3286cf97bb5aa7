using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Triage;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Data.Calibrations;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>triage REQUEST.toml</c>: what a repair is likely to take, before it is accepted.</summary>
internal static class TriageCommand
{
    private const int MostPads = PinRegister.MostPins;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Argument<string> path = FilePaths.Request();
        Option<string?> job = new("--job") { Description = HelpText.TriageJob, HelpName = "job" };
        Option<string?> store = FilePaths.Option("--store", HelpText.TriageStore);
        Option<int?> pads = Numbers.WholeOption("--pads", HelpText.TriagePads, 1, MostPads);
        Option<int?> missing = Numbers.WholeOption("--missing", HelpText.TriageMissing, 0, MostPads);
        Option<int?> loose = Numbers.WholeOption("--loose", HelpText.TriageLoose, 0, MostPads);
        Option<int?> plan = Numbers.WholeOption("--plan", HelpText.TriagePlan, 1, 20);
        Option<string?> folder = CalibrateCommand.FolderOption();
        Command command = new("triage", HelpText.Triage) { path, job, store, pads, missing, loose, plan, folder };
        command.SetAction(parse =>
        {
            TriageWish wish = new(
                parse.GetRequiredValue(path),
                parse.GetValue(job),
                parse.GetValue(store),
                parse.GetValue(pads),
                parse.GetValue(missing) ?? 0,
                parse.GetValue(loose) ?? 0,
                parse.GetValue(plan) ?? 1);
            return Front.Show(Answer(shell, wish, CalibrateCommand.FolderOf(parse.GetValue(folder))), parse.GetValue(json), shell);
        });
        return command;
    }

    private static Reply Answer(Shell shell, TriageWish wish, CalibrationFolder calibrations)
    {
        if ((wish.Pads is null) == (wish.Job is null) || wish.Missing + wish.Loose > (wish.Pads ?? MostPads))
        {
            return new Reply.Misused(wish.Pads is null == wish.Job is null ? TriageWords.JobOrPads : TriageWords.TooManyDamaged);
        }

        if (wish.Job is not null && wish.Missing + wish.Loose > 0)
        {
            return new Reply.Misused(TriageWords.DamageOfJob);
        }

        PosedPlan posed = PosedPlan.Read(shell, wish.Path, calibrations);
        if (posed is not PosedPlan.Ready { Workshop: { } workshop, Request: { } request })
        {
            return ((PosedPlan.Refused)posed).Reply;
        }

        (IReadOnlyList<PadSituation> pads, string? fault) = wish.Job is { } job ? Registered(shell, request, job, wish.Store) : (Counted(request, wish), null);
        if (fault is not null)
        {
            return new Reply.Misused(fault);
        }

        MeltingShelf shelf = new(shell.Data);
        PlanOutcome outcome;
        using (ProgressLine progress = new(shell))
        {
            outcome = new PlanSearch(shelf.Engine, shelf.Alloys.Properties, workshop.Limits).Search(request, progress, shell.Cancellation);
        }

        if (outcome is not PlanOutcome.Planned planned)
        {
            return new Reply.AnsweredNo(new PlanView(PlanReporting.Of(request, outcome, [])));
        }

        if (wish.Plan > planned.Plans.Count)
        {
            return new Reply.Misused(Refusals.NoSuchPlan(wish.Plan, planned.Plans.Count));
        }

        Plan plan = planned.Plans[wish.Plan - 1];
        JobForecast forecast = new TriageSurvey(workshop.Limits, shelf.Alloys.Properties, workshop.Effort).Of(request, plan, pads);
        return new Reply.Answered(new TriageView(TriageReporting.Of(request, plan, forecast, outcome.Assumptions)));
    }

    private static List<PadSituation> Counted(PlanRequest request, TriageWish wish) =>
    [
        .. Enumerable.Range(1, wish.Pads!.Value).Select(n => new PadSituation(
            new PadId(n.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            n <= wish.Missing ? PadState.Missing : n <= wish.Missing + wish.Loose ? PadState.Loose : PadState.Sound,
            request.Prior,
            true)),
    ];

    private static (IReadOnlyList<PadSituation> Pads, string? Fault) Registered(Shell shell, PlanRequest request, string job, string? store)
    {
        JobPads pads = JobPads.Read(shell, store, job, request);
        if (pads is not JobPads.Judged judged)
        {
            return ([], ((JobPads.Refused)pads).Reason);
        }

        IReadOnlyList<PadSituation> pins =
        [
            .. judged.Accounts.Where(a => a.Ledger.Pin is not null).Select(a => new PadSituation(
                a.Ledger.Pad,
                a.Ledger.State,
                a.PriorIsAssumed ? request.Prior : a.Prior,
                a.Ledger.Pin!.Duty is not PinDuty.NoConnect)
            {
                Damage = a.Steps.Count > 0 ? a.Damage : null,
            }),
        ];
        return pins.Count > 0 ? (pins, null) : ([], TriageWords.NoPins(job));
    }
}
