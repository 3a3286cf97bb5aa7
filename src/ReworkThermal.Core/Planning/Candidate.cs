namespace ReworkThermal.Core.Planning;

/// <summary>A mix at a tool setting, judged by a run without heat of melting: never slower than the real one.</summary>
/// <param name="Mix">The mix.</param>
/// <param name="Station">The tool setting with its runs.</param>
/// <param name="Cost">What the job takes, passes estimated from the mass balance.</param>
internal sealed record Candidate(MixOption Mix, Station Station, JobCost Cost);
