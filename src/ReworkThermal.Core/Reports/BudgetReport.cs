using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;

namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "how much have the pads of this job had?"</summary>
/// <param name="Job">The job.</param>
/// <param name="Label">What the technician calls it.</param>
/// <param name="Pads">Every pad, judged.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record BudgetReport(
    JobId Job,
    string Label,
    IReadOnlyList<PadAccount> Pads,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);
