namespace ReworkThermal.Core.Planning;

/// <summary>A mix at a tool setting, judged by a run without heat of melting: never slower than the real one.</summary>
/// <param name="Mix">The mix.</param>
/// <param name="Station">The tool setting with its runs.</param>
/// <param name="Least">What the job takes at least: without heat of melting.</param>
/// <param name="Likely">What it probably takes: with the delay that the refill alloy's heat of melting makes at the same setting.</param>
internal sealed record Candidate(MixOption Mix, Station Station, JobCost Least, JobCost Likely);
