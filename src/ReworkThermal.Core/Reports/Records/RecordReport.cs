using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Solders;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Records;

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

/// <summary>One check of one data file.</summary>
/// <param name="File">Path below the data folder, with forward slashes.</param>
/// <param name="Subject">What was checked, for example "Sn-Pb eutectic".</param>
/// <param name="Outcome">What came of it.</param>
public sealed record CheckLine(string File, string Subject, CheckOutcome Outcome);

/// <summary>What came of a check.</summary>
public abstract record CheckOutcome
{
    private CheckOutcome()
    {
    }

    /// <summary>In order.</summary>
    /// <param name="Remark">Figures worth showing; may be empty.</param>
    public sealed record Passed(string Remark) : CheckOutcome;

    /// <summary>The file can be read, but what it says does not hold.</summary>
    /// <param name="Reason">One sentence with the figures.</param>
    public sealed record Failed(string Reason) : CheckOutcome;

    /// <summary>The file cannot be used.</summary>
    /// <param name="Reason">One sentence with line and field.</param>
    public sealed record Broken(string Reason) : CheckOutcome;
}

/// <summary>One touch of a plan: how the tools are set, how long, and what it does.</summary>
/// <param name="Iron">The iron with its tip; null when no iron is used.</param>
/// <param name="IronSetting">Set temperature of the iron; null when no iron is used.</param>
/// <param name="Air">Hot air on the joint, by itself or before and beside the iron; null without air.</param>
/// <param name="Preheater">The preheater; null without one.</param>
/// <param name="Board">Board temperature before the touch.</param>
/// <param name="TimeToFlow">Time until the coldest solder flows, with central values.</param>
/// <param name="Dwell">How long the touch should last.</param>
/// <param name="Stop">When to stop at the latest, whether it has flowed or not.</param>
/// <param name="StopReason">What sets that time, one clause.</param>
/// <param name="PadPeak">Highest temperature between pad and laminate.</param>
public sealed record TouchLine(
    string? Iron,
    Temperature? IronSetting,
    AirLine? Air,
    string? Preheater,
    Temperature Board,
    Duration TimeToFlow,
    Duration Dwell,
    Duration Stop,
    string StopReason,
    Temperature PadPeak);

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
