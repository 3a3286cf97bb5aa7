namespace ReworkThermal.Core.Reports;

/// <summary>What is to be expected of one pad.</summary>
/// <param name="Pad">The pad.</param>
/// <param name="State">What it looks like.</param>
/// <param name="Prior">Assumed earlier heat.</param>
/// <param name="Touches">Touches the plan gives it.</param>
/// <param name="Before">Band before; null for a pad that is gone.</param>
/// <param name="After">Band after, central figures; null for a pad that is gone.</param>
/// <param name="AtWorst">Band after, unfavourable ends; null for a pad that is gone.</param>
/// <param name="Wire">"no", "possible" or "certain".</param>
/// <param name="Reason">Why, one sentence.</param>
public sealed record PadOutlook(string Pad, string State, string Prior, int Touches, string? Before, string? After, string? AtWorst, string Wire, string Reason);
