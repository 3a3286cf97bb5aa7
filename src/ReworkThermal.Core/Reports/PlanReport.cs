namespace ReworkThermal.Core.Reports;

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
