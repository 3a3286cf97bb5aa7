using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "how does the heat go through this board?": temperatures at named places against time.</summary>
/// <param name="Title">What was run, as the case file names it.</param>
/// <param name="Times">Sample times, rising from the start of the run; a steady state has one.</param>
/// <param name="Probes">One trace per place; each has as many temperatures as there are times.</param>
/// <param name="Solder">How the solder fared; null when there is none.</param>
/// <param name="HeatIn">Heat into the model by way; negative where it left.</param>
/// <param name="EnergyBalanceError">Heat that the books cannot account for, as a share of the heat that moved [1].</param>
/// <param name="Mesh">How the run was discretised, and the error that leaves.</param>
/// <param name="Neighbours">Parts near the joint and whether they came past their limits.</param>
/// <param name="Notes">What was assumed and what limits the answer, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record HeatReport(
    string Title,
    IReadOnlyList<Duration> Times,
    IReadOnlyList<ProbeTrace> Probes,
    SolderTrace? Solder,
    IReadOnlyList<HeatShare> HeatIn,
    double EnergyBalanceError,
    HeatMesh Mesh,
    IReadOnlyList<NeighbourLine> Neighbours,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);
