namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "how do I do this joint?": plans that differ in kind, best first; or none, with the reasons.</summary>
/// <param name="Title">What was asked for, as the request names it.</param>
/// <param name="Plans">Plans, best first; empty when none holds every limit.</param>
/// <param name="RuledOut">What was considered and left out, and why.</param>
/// <param name="Budget">What the heat budget rests on and which gauges are not computed yet, one sentence each.</param>
/// <param name="Cautions">Hazards of this job, one sentence each.</param>
/// <param name="Notes">What was assumed or left out, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record PlanReport(
    string Title,
    IReadOnlyList<PlanLine> Plans,
    IReadOnlyList<RuledOut> RuledOut,
    IReadOnlyList<string> Budget,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);
