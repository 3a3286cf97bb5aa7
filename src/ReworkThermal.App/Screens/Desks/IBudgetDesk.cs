using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Reckons what heat the pads of a job have had. Called on a background thread.</summary>
internal interface IBudgetDesk
{
    /// <summary>Budgets of all pads.</summary>
    public IReadOnlyDictionary<PadId, PadBudget> Reckon(JobState job, CancellationToken cancellation);
}
