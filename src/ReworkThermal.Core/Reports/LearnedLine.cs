namespace ReworkThermal.Core.Reports;

/// <summary>A learned input before and after; ranges are the middle eight tenths.</summary>
/// <param name="Input">The input.</param>
/// <param name="Unit">Its unit; empty for a factor.</param>
/// <param name="Before">Central value before.</param>
/// <param name="LowBefore">Lower end before.</param>
/// <param name="HighBefore">Upper end before.</param>
/// <param name="After">Most likely value after.</param>
/// <param name="LowAfter">Lower end after.</param>
/// <param name="HighAfter">Upper end after.</param>
public sealed record LearnedLine(string Input, string Unit, double Before, double LowBefore, double HighBefore, double After, double LowAfter, double HighAfter);
