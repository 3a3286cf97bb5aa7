namespace ReworkThermal.Core.Planning;

/// <summary>A mix at a tool setting, judged by a run without heat of melting: never slower than the real one.</summary>
/// <param name="Mix">The mix.</param>
/// <param name="Station">The tool setting with its runs.</param>
/// <param name="Passes">Passes, estimated from the mass balance.</param>
/// <param name="Objective">Estimated loss of adhesion by the job [1]: what the ranking goes by.</param>
internal sealed record Candidate(MixOption Mix, Station Station, int Passes, double Objective);
