namespace ReworkThermal.Core.Reports.Plans;

/// <summary>Answer to "how do I do this joint?": plans that differ in kind, best first; or none, with the reasons.</summary>
/// <param name="Title">What was asked for, as the request names it.</param>
/// <param name="Joint">The joint on its board, in words.</param>
/// <param name="Plans">Plans, best first; empty when none holds every limit.</param>
/// <param name="NoPlanReason">Which limit blocks and by how much; null when there are plans.</param>
/// <param name="RuledOut">What was considered and left out, and why.</param>
/// <param name="Budget">What the heat budget rests on, one sentence each.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record PlanReport(
    string Title,
    string Joint,
    IReadOnlyList<PlanLine> Plans,
    string? NoPlanReason,
    IReadOnlyList<RuledOut> RuledOut,
    IReadOnlyList<string> Budget,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);

/// <summary>Something that was considered and left out.</summary>
/// <param name="Subject">What: an alloy, a setting, a whole plan.</param>
/// <param name="Reason">Why, one sentence with the figures.</param>
public sealed record RuledOut(string Subject, string Reason);

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

/// <summary>One figure of a plan with how it came about.</summary>
/// <param name="Step">Which step of the reasoning it belongs to.</param>
/// <param name="Figure">The figure with its unit, in words.</param>
/// <param name="How">Formula or rule, one clause.</param>
/// <param name="RestsOn">Data file entries with their sources, or "assumption".</param>
public sealed record WhyLine(string Step, string Figure, string How, string RestsOn);
