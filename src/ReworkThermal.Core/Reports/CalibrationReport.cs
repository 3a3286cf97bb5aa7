namespace ReworkThermal.Core.Reports;

/// <summary>What observed touches have taught about a model of board.</summary>
/// <param name="Board">Board profile.</param>
/// <param name="Touches">The observed touches.</param>
/// <param name="Inputs">The learned inputs; empty when nothing could be learned.</param>
/// <param name="Reason">Why nothing could be learned; null when something was.</param>
public sealed record CalibrationReport(string Board, IReadOnlyList<ObservedLine> Touches, IReadOnlyList<LearnedLine> Inputs, string? Reason);
