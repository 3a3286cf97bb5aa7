namespace ReworkThermal.Core.Reports;

/// <summary>How much of a spread one input is to blame for.</summary>
/// <param name="Input">The input.</param>
/// <param name="Share">Its share of the spread [1].</param>
/// <param name="HowToLearn">What can be done to know it better, one clause.</param>
/// <param name="Source">Where its range comes from: a key of the bibliography or a plain phrase.</param>
public sealed record InfluenceLine(string Input, double Share, string HowToLearn, string Source);
