using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Makes plans. Called on a background thread.</summary>
internal interface IPlanDesk
{
    /// <summary>Answers a request.</summary>
    /// <param name="form">The request.</param>
    /// <param name="job">The job whose pad the request may name; null when none is open.</param>
    /// <param name="progress">Called now and then from any thread.</param>
    /// <param name="ranked">Called once with the ranked plans when there are any, before they are sampled.</param>
    /// <param name="cancellation">Signalled when the technician breaks off.</param>
    /// <returns>The answer, plans with their spread.</returns>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public PlanAnswer Plan(PlanForm form, JobState? job, Action<PlanProgress> progress, Action<PlanAnswer.Answered> ranked, CancellationToken cancellation);
}
