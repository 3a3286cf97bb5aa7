namespace ReworkThermal.Core.Jobs;

/// <summary>An entry that was a mistake.</summary>
/// <param name="Entry">The entry, still readable.</param>
/// <param name="By">Number of the entry that voided it.</param>
/// <param name="Reason">Why.</param>
public sealed record VoidedEntry(JobEntry Entry, int By, string Reason);
