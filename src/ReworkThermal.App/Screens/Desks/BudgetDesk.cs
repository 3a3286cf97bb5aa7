using ReworkThermal.App.Commands;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Heat budgets of all pads of a job, judged as the command <c>budget show</c> judges them.</summary>
/// <param name="workshop">What pads are judged with; used on the thread of the budgets only.</param>
internal sealed class BudgetDesk(JobWorkshop workshop) : IBudgetDesk
{
    public IReadOnlyDictionary<PadId, PadBudget> Reckon(JobState job, CancellationToken cancellation)
    {
        if (workshop.SiteOf(job.Brief) is not JobSite.Known known)
        {
            PadBudget.Unknown unknown = new(job.Brief switch
            {
                { Joint: null } => ScreenBudgetWords.NoJoint,
                { Board: null } => ScreenBudgetWords.NoBoard,
                _ => ScreenBudgetWords.NoSite,
            });
            return job.Pads.Keys.ToDictionary(p => p, PadBudget (_) => unknown);
        }

        Dictionary<PadId, PadBudget> budgets = [];
        foreach (PadId pad in job.Pads.Keys)
        {
            cancellation.ThrowIfCancellationRequested();
            budgets[pad] = Of(workshop.Account(job, pad, known));
        }

        return budgets;
    }

    private static PadBudget.Known Of(PadAccount account) => new(
        account.Budget.Share.Low,
        account.Budget.Share.Central,
        account.Budget.Share.High,
        account.Budget.Governing.Kind.Word(),
        account.NotCounted);
}
