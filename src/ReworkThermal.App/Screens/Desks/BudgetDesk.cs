using ReworkThermal.App.Wording;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Heat budgets of all pads of a job.</summary>
/// <param name="reckoner">Reckons one pad.</param>
internal sealed class BudgetDesk(PadReckoner reckoner) : IBudgetDesk
{
    public IReadOnlyDictionary<PadId, PadBudget> Reckon(JobState job, CancellationToken cancellation)
    {
        Dictionary<PadId, PadBudget> budgets = [];
        foreach (PadLedger pad in job.Pads.Values)
        {
            cancellation.ThrowIfCancellationRequested();
            budgets[pad.Pad] = Of(reckoner.Of(job, pad));
        }

        return budgets;
    }

    private static PadBudget Of(PadHistory history)
    {
        if (history is not PadHistory.Known known)
        {
            return new PadBudget.Unknown((history as PadHistory.Unknown)?.Reason ?? ScreenWords.BudgetUnknown);
        }

        HeatBudget budget = known.Model.Budget(known.State);
        return new PadBudget.Known(
            budget.Share.Low,
            budget.Share.Central,
            budget.Share.High,
            ScreenBudgetWords.Gauge(budget.Governing.Kind),
            known.WithoutTemperatures);
    }
}
