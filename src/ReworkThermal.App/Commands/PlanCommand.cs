using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Data;
using ReworkThermal.Data.Calibrations;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>plan REQUEST.toml</c>: the main job.</summary>
internal static class PlanCommand
{
    private const int LeastSamples = 10;

    private const int MostSamples = 10_000;

    private const int MostPlans = 20;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Argument<string> path = FilePaths.Request();
        Option<int?> samples = Numbers.WholeOption("--samples", HelpText.Samples(PlanSampler.UsualSamples), 0, MostSamples);
        Option<int?> why = Numbers.WholeOption("--why", HelpText.Why, 1, MostPlans);
        Option<int[]?> compare = Numbers.WholePairOption("--compare", HelpText.Compare, 1, MostPlans);
        Option<string?> job = new("--job") { Description = HelpText.PlanJob, HelpName = "job" };
        Option<string?> pad = new("--pad") { Description = HelpText.PlanPad, HelpName = "pad" };
        Option<string?> store = FilePaths.Option("--store", HelpText.TriageStore);
        Option<string?> folder = CalibrateCommand.FolderOption();
        Command command = new("plan", HelpText.Plan) { path, samples, job, pad, store, why, compare, folder };
        command.SetAction(parse =>
        {
            PlanWish wish = new(
                parse.GetRequiredValue(path),
                parse.GetValue(samples) ?? PlanSampler.UsualSamples,
                parse.GetValue(job),
                parse.GetValue(pad),
                parse.GetValue(store),
                parse.GetValue(why),
                parse.GetValue(compare) ?? []);
            return Front.Show(Answer(shell, wish, CalibrateCommand.FolderOf(parse.GetValue(folder))), parse.GetValue(json), shell);
        });
        return command;
    }

    private static Reply Answer(Shell shell, PlanWish wish, CalibrationFolder calibrations)
    {
        if (wish.Samples is > 0 and < LeastSamples)
        {
            return new Reply.Misused(Refusals.TooFewSamples(LeastSamples));
        }

        if (wish.Why is not null && wish.Compare.Length > 0)
        {
            return new Reply.Misused(Refusals.WhyOrCompare);
        }

        if ((wish.Job is null) != (wish.Pad is null))
        {
            return new Reply.Misused(PlanWords.JobAndPad);
        }

        PosedPlan posed = PosedPlan.Read(shell, wish.Path, calibrations);
        if (posed is PosedPlan.Ready whole && wish is { Job: { } job, Pad: { } pad })
        {
            posed = PosedPlan.WithPad(whole, job, pad, request => JobPads.Read(shell, wish.Store, job, request));
        }

        return posed switch
        {
            PosedPlan.Ready ready => Answer(shell, wish, ready.Workshop, ready.Request),
            PosedPlan.Refused refused => refused.Reply,
            _ => throw new InvalidOperationException("unknown kind of posed plan"),
        };
    }

    private static Reply Answer(Shell shell, PlanWish wish, Workshop workshop, PlanRequest request)
    {
        MeltingShelf shelf = new(shell.Data);
        PlanOutcome outcome = Outcome(shell, workshop, shelf, request, wish.Samples);
        PlanReport report = PlanReporting.Of(request, outcome, SourcesFor(shell, shelf, request, outcome));
        if (outcome is not PlanOutcome.Planned planned)
        {
            return new Reply.AnsweredNo(new PlanView(report));
        }

        int[] asked = wish.Why is { } one ? [one] : wish.Compare;
        return asked.FirstOrDefault(n => n < 1 || n > planned.Plans.Count) is var missing and not 0
            ? new Reply.Misused(Refusals.NoSuchPlan(missing, planned.Plans.Count))
            : new Reply.Answered(wish switch
            {
                { Why: { } number } => new PlanWhyView(report, number, PlanReasons.Of(request, planned.Plans[number - 1])),
                { Compare: [int first, int second] } => new PlanCompareView(report, first, second),
                _ => new PlanView(report),
            });
    }

    private static PlanOutcome Outcome(Shell shell, Workshop workshop, MeltingShelf shelf, PlanRequest request, int samples)
    {
        PlanOutcome outcome;
        using (ProgressLine progress = new(shell))
        {
            outcome = new PlanSearch(shelf.Engine, shelf.Alloys.Properties, workshop.Limits).Search(request, progress, shell.Cancellation);
        }

        if (samples == 0)
        {
            return outcome;
        }

        using ProgressLine sampling = new(shell);
        return new PlanSampler(shelf.Engine, shelf.Alloys.Properties, workshop.Limits).Sampled(request, outcome, samples, sampling, shell.Cancellation);
    }

    private static IReadOnlyList<string> SourcesFor(Shell shell, MeltingShelf shelf, PlanRequest request, PlanOutcome outcome)
    {
        IEnumerable<string> melting = outcome is PlanOutcome.Planned planned
            ? planned.Plans.SelectMany(p => shelf.SourcesFor(p.Melting.Composition))
            : shelf.SourcesFor(request.BaseSolder.Fractions);
        IEnumerable<string> bench = Citations.Of(
            shell.Data.AllFiles("profiles").Select(f => f.Path),
            shell.Data.SourcesOf("profiles"));
        return [.. melting.Concat(bench).Distinct(StringComparer.Ordinal)];
    }
}
