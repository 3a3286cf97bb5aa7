namespace ReworkThermal.Core.Reports;

/// <summary>One check of one data file.</summary>
/// <param name="File">Path below the data folder, with forward slashes.</param>
/// <param name="Subject">What was checked, for example "Sn-Pb eutectic".</param>
/// <param name="Outcome">What came of it.</param>
public sealed record CheckLine(string File, string Subject, CheckOutcome Outcome);
