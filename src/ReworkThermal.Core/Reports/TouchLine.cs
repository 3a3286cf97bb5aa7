using UnitsNet;

namespace ReworkThermal.Core.Reports;

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
