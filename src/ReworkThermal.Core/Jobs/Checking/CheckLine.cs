namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>One line of the check list.</summary>
/// <param name="Check">What to probe.</param>
/// <param name="Expected">What should be seen.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="Last">The probing that counts, or null while open; for a stale line, the one that no longer does.</param>
public sealed record CheckLine(ElectricalCheck Check, ExpectedReading Expected, CheckStanding Standing, Logged<JobEvent.CheckDone>? Last);
