namespace ReworkThermal.Core.Reports.Plans;

/// <summary>What observed touches have taught about a model of board.</summary>
/// <param name="Board">Board profile.</param>
/// <param name="Touches">The observed touches.</param>
/// <param name="Inputs">The learned inputs; empty when nothing could be learned.</param>
/// <param name="Reason">Why nothing could be learned; null when something was.</param>
public sealed record CalibrationReport(string Board, IReadOnlyList<ObservedLine> Touches, IReadOnlyList<LearnedLine> Inputs, string? Reason);

/// <summary>One observed touch against the model.</summary>
/// <param name="Number">Number by which it can be forgotten.</param>
/// <param name="Setting">How the tools were set, in words.</param>
/// <param name="Seen">What was seen, in words.</param>
/// <param name="Unit">Unit of the figures: s or °C.</param>
/// <param name="Before">What the model expected without calibration; null when nothing was fitted.</param>
/// <param name="After">What it expects with it.</param>
/// <param name="Misfit">Distance of observation and fit in standard deviations of the measurement.</param>
/// <param name="IsOutlier">Whether it was set aside.</param>
public sealed record ObservedLine(int Number, string Setting, string Seen, string Unit, double? Before, double? After, double? Misfit, bool IsOutlier);
