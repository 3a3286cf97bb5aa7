namespace ReworkThermal.Core.Reports;

/// <summary>The refitted joint after a number of passes.</summary>
/// <param name="Passes">Number of passes.</param>
/// <param name="ResidueFraction">Share of the refitted joint that the last pass left [kg/kg].</param>
/// <param name="Final">The refitted joint.</param>
public sealed record CleaningLine(int Passes, double ResidueFraction, FinalJointLine Final);
