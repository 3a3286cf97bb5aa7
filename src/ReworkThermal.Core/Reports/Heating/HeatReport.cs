using ReworkThermal.Core.Reports.Plans;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Heating;

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

/// <summary>How a heat-flow run was discretised.</summary>
/// <param name="RadialCells">Cells along the radius.</param>
/// <param name="AxialCells">Cells through the thickness.</param>
/// <param name="Steps">Time steps taken.</param>
/// <param name="Error">Error of the temperatures shown that the mesh leaves, estimated from a run on a mesh half as fine; null when it was not asked for.</param>
public sealed record HeatMesh(int RadialCells, int AxialCells, int Steps, TemperatureDelta? Error);

/// <summary>Heat that took one way into the model.</summary>
/// <param name="Way">The way, for example the iron or the bottom face.</param>
/// <param name="Heat">Heat over the whole run; negative where it left.</param>
public sealed record HeatShare(string Way, Energy Heat);

/// <summary>Temperature of one place against the times of its report.</summary>
/// <param name="Name">Name of the place, a JSON-safe identifier such as <c>near_pad</c>.</param>
/// <param name="Temperatures">One per time.</param>
public sealed record ProbeTrace(string Name, IReadOnlyList<Temperature> Temperatures);

/// <summary>How the solder of a joint fared in a heat-flow run.</summary>
/// <param name="Flow">Flow temperature of the solder.</param>
/// <param name="Superheat">How far above it the coldest solder should come to be worked.</param>
/// <param name="TimeToFlow">When the coldest solder of the whole joint flowed, 97 % liquid; null if it never did.</param>
/// <param name="TimeToSuperheat">When it had its superheat too; null if it never had.</param>
/// <param name="ColdestPeak">Highest temperature of the coldest solder.</param>
/// <param name="LiquidFractions">Share of the solder that is liquid at the times of the report [1].</param>
/// <param name="FlowedFractions">Share of the solder that has flow temperature at those times [1].</param>
/// <param name="FrontFractions">Share of the barrel's length that has flowed from the touched face on at those times [1]; empty without a barrel.</param>
public sealed record SolderTrace(
    Temperature Flow,
    TemperatureDelta Superheat,
    Duration? TimeToFlow,
    Duration? TimeToSuperheat,
    Temperature ColdestPeak,
    IReadOnlyList<double> LiquidFractions,
    IReadOnlyList<double> FlowedFractions,
    IReadOnlyList<double> FrontFractions);
