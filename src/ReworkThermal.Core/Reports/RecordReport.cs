using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;

namespace ReworkThermal.Core.Reports;

/// <summary>Everything the record of a job says, ready to be written.</summary>
/// <param name="Job">The job.</param>
/// <param name="Pads">Its pads, judged; empty when they could not be.</param>
/// <param name="NotJudged">Why the pads could not be judged; null when they were.</param>
/// <param name="Alloys">Solder on arrival and alloys brought to the board.</param>
/// <param name="Final">The solder of the joint that was worked on most; null when none is known.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
/// <param name="ProgramVersion">Version of the program.</param>
/// <param name="DataFingerprint">Fingerprint of the data files.</param>
public sealed record RecordReport(
    JobState Job,
    IReadOnlyList<PadAccount> Pads,
    string? NotJudged,
    IReadOnlyList<AlloyUse> Alloys,
    FinalSolder? Final,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources,
    string ProgramVersion,
    string DataFingerprint);
