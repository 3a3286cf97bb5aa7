namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>What came of fitting the learnable inputs to observed touches.</summary>
public abstract record FitOutcome
{
    private FitOutcome()
    {
    }

    /// <summary>The fit settled.</summary>
    /// <param name="Deviations">Most likely inputs, in standard deviations from the centres of their ranges.</param>
    /// <param name="Covariance">Their covariance by the curvature at the solution (Laplace).</param>
    /// <param name="Touches">Every observation against the fit, in order.</param>
    public sealed record Fitted(IReadOnlyList<double> Deviations, IReadOnlyList<IReadOnlyList<double>> Covariance, IReadOnlyList<FittedTouch> Touches) : FitOutcome;

    /// <summary>No calibration.</summary>
    /// <param name="Reason">One sentence.</param>
    public sealed record NotFitted(string Reason) : FitOutcome;
}
