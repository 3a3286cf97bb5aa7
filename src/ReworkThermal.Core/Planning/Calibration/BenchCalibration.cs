namespace ReworkThermal.Core.Planning.Calibration;

/// <summary>
/// What observed touches have taught about a bench and a model of board: the learnable inputs, in the order of
/// <see cref="Uncertainty.UncertainInputs.Learnable"/>, as standard deviations of their own ranges. Start reading this folder here:
/// <see cref="Calibrator"/> makes one from <see cref="BenchObservation"/>s.
/// </summary>
/// <param name="Board">Name of the model of board.</param>
/// <param name="Deviations">Most likely value of each input, in standard deviations from the centre of its range.</param>
/// <param name="Covariance">Covariance of these numbers: one row per input.</param>
/// <param name="Observations">Number of observations it rests on, outliers left out.</param>
public sealed record BenchCalibration(
    string Board,
    IReadOnlyList<double> Deviations,
    IReadOnlyList<IReadOnlyList<double>> Covariance,
    int Observations);
