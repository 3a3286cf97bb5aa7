using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Uncertainty;

namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>Learns a bench from observations of one model of board.</summary>
/// <param name="properties">Density and conductivity rules.</param>
public sealed class Calibrator(SolderProperties properties)
{
    /// <summary>Fits the learnable inputs.</summary>
    /// <param name="observations">Observations on one model of board.</param>
    /// <param name="cancellation">Stops the fit.</param>
    /// <returns>The fit, or why there is none.</returns>
    public FitOutcome Fit(IReadOnlyList<BenchObservation> observations, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(observations);
        if (observations.Count == 0)
        {
            return new FitOutcome.NotFitted("there is no observation yet");
        }

        BenchScatter scatter = observations[0].Bench.Scatter;
        return new CalibrationFit(
            [.. observations.Select(o => o.Seen)],
            new SimulatedResponse(observations, properties, cancellation),
            scatter.TimingError.Central,
            scatter.ReadingError.Central.Kelvins).Run(cancellation);
    }

    /// <summary>The learnable inputs of a bench before and after.</summary>
    /// <param name="request">Joint and bench.</param>
    /// <param name="learned">The calibration.</param>
    /// <returns>One line per learnable input.</returns>
    public static IReadOnlyList<LearnedInput> Learned(PlanRequest request, BenchCalibration learned)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(learned);
        return [.. LearnedBench.InputsOf(request).Select((input, i) =>
        {
            double spread = LearnedInput.MiddleEightTenths * Math.Sqrt(learned.Covariance[i][i]);
            return new LearnedInput(input, input.At(learned.Deviations[i]), input.At(learned.Deviations[i] - spread), input.At(learned.Deviations[i] + spread));
        })];
    }
}
