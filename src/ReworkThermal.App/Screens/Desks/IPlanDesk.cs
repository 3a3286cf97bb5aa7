using ReworkThermal.Core.Planning;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Makes plans. Called on a background thread.</summary>
internal interface IPlanDesk
{
    /// <summary>Answers a request.</summary>
    /// <param name="form">The request.</param>
    /// <param name="progress">Called now and then from any thread.</param>
    /// <param name="cancellation">Signalled when the technician breaks off.</param>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public PlanAnswer Plan(PlanForm form, Action<PlanProgress> progress, CancellationToken cancellation);
}
