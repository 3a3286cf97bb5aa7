using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "how does the heat go through this board?": temperatures at named places against time.</summary>
/// <param name="Title">What was run, as the case file names it.</param>
/// <param name="Times">Sample times, rising from the start of the run.</param>
/// <param name="Probes">One trace per place; each has as many temperatures as there are times.</param>
/// <param name="TimeToFlow">When the solder had reached its flow temperature through the whole barrel; null if it never did or there is no solder.</param>
/// <param name="EnergyBalanceError">Heat that the books cannot account for, as a share of the heat that went in.</param>
/// <param name="Notes">What was assumed or left out, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record HeatReport(
    string Title,
    IReadOnlyList<Duration> Times,
    IReadOnlyList<ProbeTrace> Probes,
    Duration? TimeToFlow,
    double EnergyBalanceError,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);
