using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Data;
using ReworkThermal.Data.Calibrations;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Plans as the command <c>plan</c> makes them: on the bench that timed touches have taught, ranked first and sampled then.</summary>
/// <param name="workshop">The data folders; used on the thread of the plans only.</param>
/// <param name="calibrations">What timed touches have taught, by model of board.</param>
internal sealed class PlanDesk(JobWorkshop workshop, CalibrationFolder calibrations) : IPlanDesk
{
    private readonly PlanRequests _requests = new(workshop);

    public PlanAnswer Plan(PlanForm form, JobState? job, Action<PlanProgress> progress, Action<PlanAnswer.Answered> ranked, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(ranked);
        if (_requests.Of(form, out PlanAnswer.Refused? refused) is not { } request)
        {
            return refused!;
        }

        if (form[PlanField.Pad] != ScreenPlanWords.NoneAtHand && job is not null)
        {
            if (PadOf(job, new PadId(form[PlanField.Pad]), request, out string reason) is not { } account)
            {
                return new PlanAnswer.Refused(PlanField.Pad, reason);
            }

            request = request with { Pad = account, Assumed = [.. request.Assumed, .. account.Notes] };
        }

        try
        {
            request = request with { Calibration = calibrations.Find(request.BoardName)?.Learned };
        }
        catch (DataFileException broken)
        {
            return new PlanAnswer.NotAvailable(ScreenPlanWords.CalibrationBroken(broken.Problems[0].ToString()));
        }

        Told told = new(progress);
        PlanOutcome outcome = new PlanSearch(workshop.Melting.Engine, workshop.Melting.Alloys.Properties, workshop.Workshop.Limits).Search(request, told, cancellation);
        if (outcome is PlanOutcome.Planned)
        {
            ranked(Answer(request, outcome));
            outcome = new PlanSampler(workshop.Melting.Engine, workshop.Melting.Alloys.Properties, workshop.Workshop.Limits)
                .Sampled(request, outcome, PlanSampler.UsualSamples, told, cancellation);
        }

        return Answer(request, outcome);
    }

    private PadAccount? PadOf(JobState job, PadId pad, PlanRequest request, out string reason)
    {
        if (workshop.SiteOf(job.Brief) is not JobSite.Known known)
        {
            reason = ScreenBudgetWords.NoSite;
            return null;
        }

        string joint = job.Pads[pad].Joint ?? job.Brief.Joint!;
        reason = joint != request.JointName ? ScreenPlanWords.PadOfOtherJoint(pad.Value, joint)
            : job.Brief.Board is { } board && board != request.BoardName ? ScreenPlanWords.PadOnOtherBoard(pad.Value, board)
            : string.Empty;
        return reason.Length > 0 ? null : workshop.Account(job, pad, known);
    }

    private PlanAnswer.Answered Answer(PlanRequest request, PlanOutcome outcome)
    {
        PlanReport report = PlanReporting.Of(request, outcome, []);
        return new PlanAnswer.Answered(report with { Notes = [.. workshop.OwnData, .. report.Notes] }, request.Calibration?.Observations ?? 0);
    }

    /// <summary>Hands progress on from whatever thread reports it.</summary>
    private sealed class Told(Action<PlanProgress> tell) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => tell(value);
    }
}
