namespace ReworkThermal.Core.Reports;

/// <summary>Something that was considered and left out.</summary>
/// <param name="Subject">What: an alloy, a setting, a whole plan.</param>
/// <param name="Reason">Why, one sentence with the figures.</param>
public sealed record RuledOut(string Subject, string Reason);
