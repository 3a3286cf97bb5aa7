using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Answer to "how much has this pad had, what will the next touch cost, and may I pull?"</summary>
/// <param name="Job">The job.</param>
/// <param name="Label">What the technician calls it.</param>
/// <param name="Pad">The pad, judged.</param>
/// <param name="Next">What the next touch would do; null when no setting is known to ask about.</param>
/// <param name="PullNow">What the pad holds now.</param>
/// <param name="Now">Temperature that pads and joints are taken to have now.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record PadReport(
    JobId Job,
    string Label,
    PadAccount Pad,
    ForecastOutcome? Next,
    PullCheck PullNow,
    Temperature Now,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);
