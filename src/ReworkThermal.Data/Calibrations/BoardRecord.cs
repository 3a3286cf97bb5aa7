using ReworkThermal.Core.Planning.Calibration;

namespace ReworkThermal.Data.Calibrations;

/// <summary>Everything observed on one model of board, and what it has taught.</summary>
/// <param name="Board">Board profile.</param>
/// <param name="Touches">Observed touches by number.</param>
/// <param name="Learned">The calibration; null when the touches could not be fitted.</param>
public sealed record BoardRecord(string Board, IReadOnlyList<ObservedTouch> Touches, BenchCalibration? Learned);
